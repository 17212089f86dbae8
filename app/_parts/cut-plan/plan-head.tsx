import Link from "next/link";
import { codeOf } from "#app/_parts/cut-plan/paper.ts";
import type { Planned } from "#app/_parts/cut-plan/planned.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";

/** The title strip of a plan, and a word where its records are invented. */
export function PlanHead({
  kind,
  planned: { stern, motors, plan },
}: {
  readonly kind: string;
  readonly planned: Planned;
}) {
  const demo = stern.demo || motors.some((motor) => motor.demo);
  return (
    <>
      <TitleStrip
        kind={kind}
        title={stern.record.label}
        particulars={[
          [
            motors.length > 1 ? "Motors" : "Motor",
            motors.length === 0
              ? "none yet"
              : motors.map(({ record }, i) => (
                  <span key={record.id}>
                    {i > 0 && ", "}
                    <Link href={`/fit/${stern.record.id}/${record.id}`}>{record.label}</Link>
                  </span>
                )),
          ],
          [
            "Stern",
            <Link key="stern" href={`/sterns/${stern.record.id}`}>
              its numbers
            </Link>,
          ],
          ...(plan?.notch ? [["Plan", codeOf(plan)] as const] : []),
        ]}
      />
      {demo && (
        <p>
          <span className="demo-mark">invented</span> Made up to show how Sternwright works; nothing like it
          exists, and nothing is to be sawn to it.
        </p>
      )}
    </>
  );
}
