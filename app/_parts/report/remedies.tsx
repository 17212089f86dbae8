import { OutcomeWord } from "#app/_parts/report/outcome-mark.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import type { ReportRemedy } from "#lib/fit/report.ts";

/** What would serve, the least change first, each with the verdict of the whole pairing assessed again. */
export function Remedies({ remedies }: { remedies: readonly ReportRemedy[] }) {
  if (remedies.length === 0) return null;
  return (
    <section aria-labelledby="remedies" className="stack-near">
      <h2 id="remedies" className="drawn">
        What would serve
      </h2>
      <div className="across">
        <table>
          <caption className="unseen">Changes that serve, the least first</caption>
          <thead>
            <tr>
              <th scope="col">Change</th>
              <th scope="col">Then</th>
            </tr>
          </thead>
          <tbody>
            {remedies.map((remedy) => (
              <tr key={remedy.says}>
                <td>{unbroken(remedy.says)}</td>
                <td>
                  <OutcomeWord outcome={remedy.verdictAfter} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
