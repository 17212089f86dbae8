import Link from "next/link";
import { ENGINE_VERSION } from "#lib/fit/report.ts";

/** The block at the foot of every sheet: how to read it, and where its rules are written. */
export function TitleBlock() {
  return (
    <footer className="title-block">
      <dl className="cells">
        <div>
          <dt>Lengths</dt>
          <dd>millimetres, inches beside</dd>
        </div>
        <div>
          <dt>Sides</dt>
          <dd>port and starboard, looking forward</dd>
        </div>
        <div>
          <dt>Rules</dt>
          <dd>
            <Link href="/checks">every check and its source</Link>
          </dd>
        </div>
        <div>
          <dt>Engine</dt>
          <dd>{ENGINE_VERSION}</dd>
        </div>
      </dl>
    </footer>
  );
}
