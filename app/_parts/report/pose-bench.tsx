"use client";

import { useMemo, useState } from "react";
import { PoseDial } from "#app/_parts/report/pose-dial.tsx";
import { unbroken } from "#app/_parts/report/writing.ts";
import { obstacleWords, partWords } from "#lib/draw/clearance-marks.ts";
import type { Drawing } from "#lib/draw/drawing.ts";
import { clearancesAtPose, type PoseClearance } from "#lib/draw/pose-clearance.ts";
import { POSED_VIEWS, posedDrawing } from "#lib/draw/report-drawings.ts";
import { poseWords } from "#lib/draw/subject.ts";
import { toSvg } from "#lib/draw/svg.ts";
import type { Pose, View } from "#lib/draw/view.ts";
import { type LengthSystem, lengthWriter } from "#lib/quantity/words.ts";
import type { MotorValues } from "#lib/rig/motor.ts";
import { mount } from "#lib/rig/mounting.ts";
import type { SternValues } from "#lib/rig/stern.ts";
import drawingLook from "../drawing/drawing.module.css";
import look from "./report.module.css";

type Sheet = Pick<Drawing, "window" | "scale">;
/** A pose worth a button, with its name. */
export interface NamedPose extends Pose {
  readonly name: string;
}

/** Tilts and steers the motor by hand, and shows what comes nearest at that pose. Worked out in the browser by the same engine. */
export function PoseBench({
  motor,
  stern,
  lengths,
  sheets,
  poses,
  tilt,
  steer,
  like,
}: {
  /** Some of the motor's numbers come from like motors. */
  readonly like: boolean;
  readonly motor: MotorValues;
  readonly stern: SternValues;
  readonly lengths: LengthSystem;
  readonly sheets: { readonly profile: Sheet; readonly plan: Sheet };
  /** The first is where the motor starts. */
  readonly poses: readonly NamedPose[];
  readonly tilt: readonly [from: number, to: number];
  readonly steer: readonly [from: number, to: number];
}) {
  const mounting = useMemo(() => mount({ motor, stern }), [motor, stern]);
  const [pose, setPose] = useState<Pose>(poses[0]!);
  const all = useMemo(() => clearancesAtPose(mounting, pose), [mounting, pose]);
  return (
    <section aria-labelledby="bench" className="stack-near not-printed">
      <h2 id="bench" className="drawn">
        Tilt it and steer it
      </h2>
      {like && <p className="soft small">With numbers from like motors.</p>}
      <div className={look.dials}>
        <PoseDial
          name="Tilt: leg against the transom"
          hint={`From ${tilt[0]}° in the lowest hole to ${tilt[1]}° full up.`}
          value={pose.faceAngleDeg}
          from={tilt[0]}
          to={tilt[1]}
          onTurn={(faceAngleDeg) => setPose((was) => ({ ...was, faceAngleDeg }))}
        />
        <PoseDial
          name="Steering"
          hint={`Plus = tiller to port, as far as ${steer[1]}°; minus = to starboard, as far as ${-steer[0]}°.`}
          value={pose.steeringDeg}
          from={steer[0]}
          to={steer[1]}
          onTurn={(steeringDeg) => setPose((was) => ({ ...was, steeringDeg }))}
        />
      </div>
      <div className="row">
        {poses.map(({ name, ...at }) => (
          <button key={name} type="button" onClick={() => setPose(at)}>
            {name}
          </button>
        ))}
      </div>
      <output className={look.nearest}>
        <Nearest clearance={all[0]} pose={pose} write={lengthWriter(lengths)} />
      </output>
      <div className={look.views}>
        {POSED_VIEWS.map((view) => (
          <Posed key={view} view={view} svg={drawn(view)} />
        ))}
      </div>
    </section>
  );

  function drawn(view: View): string {
    const sheet = view === "plan" ? sheets.plan : sheets.profile;
    return toSvg(posedDrawing({ mounting, lengths }, view, pose, all[0], sheet), { id: `bench-${view}` });
  }
}

function Posed({ view, svg }: { readonly view: View; readonly svg: string }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: scrolls sideways on a phone, so the keyboard must reach it
    <section className={drawingLook.board} tabIndex={0} aria-label={`The motor as it is held, ${view}`}>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: our own drawing; every word in it is escaped by the writer */}
      <div className={look.posed} dangerouslySetInnerHTML={{ __html: svg }} />
    </section>
  );
}

function Nearest({
  clearance,
  pose,
  write,
}: {
  readonly clearance: PoseClearance | undefined;
  readonly pose: Pose;
  readonly write: (mm: number) => string;
}) {
  if (!clearance) return <>At {poseWords(pose)} nothing that was measured stands in the way.</>;
  const { part, obstacle, mm } = clearance;
  const pair = `${partWords(part)} to ${obstacleWords(obstacle)}`;
  return (
    <>
      <strong>{unbroken(mm < 0 ? `Fouls by ${write(-mm)}` : `${write(mm)} clear`)}</strong>, {pair}, at{" "}
      {poseWords(pose)}.
    </>
  );
}
