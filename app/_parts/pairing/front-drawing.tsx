import Link from "next/link";
import { getRecord, type Stored } from "#lib/db/records.ts";
import { reportDrawings } from "#lib/draw/report-drawings.ts";
import { toSvg } from "#lib/draw/svg.ts";
import { assess } from "#lib/fit/assess.ts";
import type { Motor } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import { motorValues, sternValues } from "#lib/rig/record.ts";
import type { Stern } from "#lib/rig/stern.ts";

/** The invented pairing the front sheet shows: one that fits, with a well to tilt in. */
const SHOWN = { motor: "15-hp-long-tiller-four-stroke", stern: "vee-runabout-long-well" };

/** Drawn once for each version of the two; the front sheet is asked for often. */
let drawn: { readonly of: string; readonly svg: string } | undefined;

/** The profile of an invented pairing as its report draws it, leading to that report; nothing where the two were removed. */
export async function FrontDrawing() {
  const [motor, stern] = await Promise.all([
    getRecord("motor", SHOWN.motor),
    getRecord("stern", SHOWN.stern),
  ]);
  if (!motor?.demo || !stern?.demo) return null;
  return (
    <figure className="front-drawing">
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
      <div dangerouslySetInnerHTML={{ __html: profile(motor, stern) }} />
      <figcaption className="small soft">
        An invented motor on an invented stern, from{" "}
        <Link href={`/fit/${SHOWN.stern}/${SHOWN.motor}`}>their report</Link>.
      </figcaption>
    </figure>
  );
}

function profile(motor: Stored<Motor>, stern: Stored<Stern>): string {
  const of = `${motor.version} ${stern.version}`;
  if (drawn?.of === of) return drawn.svg;
  const report = assess(motor.record, stern.record);
  const mounting = mount({ motor: motorValues(motor.record), stern: sternValues(stern.record) });
  const labels = { motorLabel: motor.record.label, sternLabel: stern.record.label };
  const { profile } = reportDrawings({ mounting, report, ...labels, lengths: "mm" });
  drawn = { of, svg: toSvg(profile, { id: "front" }) };
  return drawn.svg;
}
