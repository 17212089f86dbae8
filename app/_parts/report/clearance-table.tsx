import { unbroken } from "#app/_parts/report/writing.ts";
import { obstacleWords, partWords } from "#lib/draw/clearance-marks.ts";
import { poseWords } from "#lib/draw/subject.ts";
import type { ReportClearance } from "#lib/fit/report.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";

/** The least clearance of everything the motor can strike, over all its poses and with the tiller held straight. */
export function ClearanceTable({
  clearances,
  lengths,
  like,
}: {
  clearances: readonly ReportClearance[];
  /** Some of the motor's numbers come from like motors. */
  like: boolean;
  lengths: LengthSystem;
}) {
  if (clearances.length === 0) return null;
  const write = (mm: number) => unbroken(lengthWriter(lengths)(mm));
  const signed = (mm: number) => (mm < 0 ? `overlaps ${write(-mm)}` : write(mm));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className="across" tabIndex={0} aria-label="Least clearances">
      <table>
        <caption>
          Least clearance from everything in the way, over every tilt and every steering angle
          {like && "; with numbers from like motors"}
        </caption>
        <thead>
          <tr>
            <th scope="col">Obstacle</th>
            <th scope="col" className="number">
              Least clearance
            </th>
            <th scope="col">What comes nearest, and where</th>
            <th scope="col" className="number">
              Held straight
            </th>
          </tr>
        </thead>
        <tbody>
          {clearances.map((one) => (
            <tr key={one.obstacle}>
              <th scope="row">{obstacleWords(one.obstacle)}</th>
              <td className="number">{signed(one.mm)}</td>
              <td>
                {partWords(one.part)}: {poseWords(one)}
                {one.throughTransom && " (through the transom: in nobody's way)"}
              </td>
              <td className="number">{signed(one.straightMm)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
