import Link from "next/link";
import type { ReactNode } from "react";
import { FrontDrawing } from "#app/_parts/pairing/front-drawing.tsx";
import { PickPair } from "#app/_parts/pairing/pick-pair.tsx";
import { named } from "#app/_parts/record/named.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { allRecords } from "#lib/db/records.ts";

export const dynamic = "force-dynamic";

/** The front sheet: what Sternwright is for, a motor and a stern to pick, and the three errands people come with. */
export default async function Home() {
  const [motors, sterns, invented] = await Promise.all([named("motor"), named("stern"), anyInvented()]);
  return (
    <>
      <TitleStrip kind="Outboard motor to stern" title="Will this motor suit this stern?">
        <p className="lead">
          Sternwright tells whether an outboard will hang, steer and tilt on a small boat's stern, by how
          much, how surely, and what to cut where it will not.
        </p>
      </TitleStrip>
      {motors.length > 0 && sterns.length > 0 && <PickPair motors={motors} sterns={sterns} />}
      {invented && (
        <p className="soft">
          The motors and sterns marked <span className="demo-mark">invented</span> were made up to show how it
          works. No such motor, boat or club exists.
        </p>
      )}
      <div className="front">
        <div>
          <h2 className="unseen">Three errands</h2>
          <ul className="errands">
            <Errand who="Buying" title="Will this motor suit my stern?">
              <p>
                Measure your stern once. Then try every motor you are offered: a few numbers from the seller
                give a first answer, a tape gives a sure one.
              </p>
              <p className="row">
                <Link className="button" href="/sterns/new">
                  Enter my stern
                </Link>
                <Link className="button" href="/motors/new">
                  Enter a motor
                </Link>
                <Link className="button" href="/sale">
                  Quick check at a sale
                </Link>
              </p>
            </Errand>
            <Errand who="Building" title="Where do I cut?">
              <p>
                Leave the notch and the well empty. The report says how high the seat, how wide the notch and
                how deep the well this motor wants.
              </p>
              <p className="row">
                <Link className="button" href="/sterns/new">
                  Enter an uncut stern
                </Link>
                <Link className="button" href="/cut-plan">
                  Cut plan and templates
                </Link>
              </p>
            </Errand>
            <Errand who="In a club" title="Our measurements">
              <p>
                What one member has measured, the next need not. Every change is kept, nothing is written
                over, and all of it goes in and out as plain files.
              </p>
              <p className="row">
                <Link className="button" href="/motors">
                  Motors
                </Link>
                <Link className="button" href="/sterns">
                  Sterns
                </Link>
                <Link className="button" href="/measuring">
                  Measuring guide
                </Link>
              </p>
            </Errand>
          </ul>
        </div>
        {invented && <FrontDrawing />}
      </div>
    </>
  );
}

function Errand({ who, title, children }: { who: string; title: string; children: ReactNode }) {
  return (
    <li>
      <p className="who">{who}</p>
      <h3>{title}</h3>
      {children}
    </li>
  );
}

async function anyInvented(): Promise<boolean> {
  const all = await Promise.all([allRecords("motor"), allRecords("stern")]);
  return all.flat().some(({ demo }) => demo);
}
