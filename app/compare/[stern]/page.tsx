import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { titled } from "#app/_parts/record/named.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import look from "#app/compare/_parts/compare.module.css";
import { CompareTable } from "#app/compare/_parts/compare-table.tsx";
import { compared } from "#app/compare/_parts/compared.ts";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import { getRecord } from "#lib/db/records.ts";
import { COMPARED_LINES, comparedProfile, LINE_WORDS, letterOf } from "#lib/draw/compared-profile.ts";
import { toSvg } from "#lib/draw/svg.ts";

export const dynamic = "force-dynamic";

interface Address {
  readonly params: Promise<{ stern: string }>;
  readonly searchParams: Promise<Query>;
}

/** At least two motors make a comparison; more than four nobody can tell apart on one drawing. */
const [LEAST, MOST] = [2, 4];

export async function generateMetadata({ params }: Address): Promise<Metadata> {
  const label = await titled(
    "stern",
    params.then(({ stern }) => ({ id: stern })),
  );
  return { title: `Motors compared for ${label}` };
}

/** The ids of an address, `motors=a,b` or `motors=a&motors=b`, each once. */
function idsFrom(motors: Query[string]): string[] {
  const texts = motors === undefined ? [] : typeof motors === "string" ? [motors] : motors;
  return [...new Set(texts.flatMap((text) => text.split(",")).filter(Boolean))].slice(0, 50);
}

/** Two to four motors on one stern, side by side and laid over each other. */
export default async function Compare({ params, searchParams }: Address) {
  const [{ stern: id }, query] = await Promise.all([params, searchParams]);
  const stored = await getRecord("stern", id);
  if (!stored) notFound();
  const asked = idsFrom(query.motors);
  const like = query.like === "1";
  const lengths = query.units === "in" ? "in" : "mm";
  const only = query.differences === "1";
  const all = await compared(stored.record, asked.slice(0, MOST), { like, lengths });
  const drawing = comparedProfile(
    all.map(({ mounting }) => mounting),
    lengths,
  );
  const address = (differences: boolean) => {
    const same = new URLSearchParams({ motors: all.map(({ motor }) => motor.id).join(",") });
    if (like) same.set("like", "1");
    if (lengths === "in") same.set("units", "in");
    if (differences) same.set("differences", "1");
    return `/compare/${id}?${same}`;
  };
  return (
    <>
      <TitleStrip kind="Motors compared on one stern" title={stored.record.label} />
      <p className="not-printed">
        <Link href={`/shortlist/${id}`}>Back to the shortlist</Link>
      </p>
      {asked.length > MOST && (
        <p className="notice">
          {asked.length} motors were ticked; the first {MOST} are shown.
        </p>
      )}
      {all.length < LEAST ? (
        <p className="notice" role="status">
          {all.length === 0 ? "No motor is chosen" : "Only one motor is chosen"}. Tick two to four on the{" "}
          <Link href={`/shortlist/${id}`}>shortlist</Link>, then compare them.
        </p>
      ) : (
        <>
          {like && (
            <p className="notice">
              <strong>Gaps filled.</strong> Numbers nobody took on a motor come from like motors.
            </p>
          )}
          <p className="row not-printed">
            <Link className="button" href={address(!only)} scroll={false} replace>
              {only ? "Show every line" : "Differences only"}
            </Link>
          </p>
          <CompareTable
            all={all}
            lengths={lengths}
            only={only}
            stern={id}
            query={`?units=${lengths}${like ? "&like=1" : ""}`}
          />
          {drawing ? (
            <figure className="stack-near kept-together">
              {/* biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it */}
              <section className={look.sheet} tabIndex={0} aria-label={`${drawing.title}, drawing`}>
                {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
                <div dangerouslySetInnerHTML={{ __html: toSvg(drawing, { id: "compared" }) }} />
              </section>
              <figcaption>
                {all.map(({ motor, report }, place) => (
                  <span key={motor.id}>
                    {place > 0 && "; "}
                    <strong>{letterOf(place)}</strong> {motor.label}, {LINE_WORDS[COMPARED_LINES[place]!]}
                    {!report.plate && " (not drawn: its tilt tube, steering axis or pin holes are not known)"}
                  </span>
                ))}
                .
              </figcaption>
            </figure>
          ) : (
            <p>
              Nothing can be drawn yet: the rake or the seat of this stern, or the axes of the motors, are not
              known.
            </p>
          )}
        </>
      )}
    </>
  );
}
