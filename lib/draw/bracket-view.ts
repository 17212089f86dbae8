/** The clamp bracket: fixed to the transom, hooked over the seat, with its screws and the tilt tube. Breadth and drop are measured; the rest of its shape is typical. */
import { arc, type Flat, line, type Mark, outline } from "#lib/draw/drawing.ts";
import { silhouette } from "#lib/draw/hull.ts";
import { type Berth, fromBracket, type View } from "#lib/draw/view.ts";
import type { BracketPoint } from "#lib/rig/frame.ts";
import type { MotorValues } from "#lib/rig/motor.ts";

/** Radius of the tilt tube as drawn, mm; typical. */
const TUBE = 13;

/** The bracket in a view; empty where neither its drop nor its breadth is known. `thicknessMm` is the transom's. */
export function drawnBracket(
  motor: MotorValues,
  thicknessMm: number | undefined,
  view: View,
  berth: Berth,
): Mark[] {
  if (view === "profile") return fromPort(motor, thicknessMm, berth);
  if (view === "plan") return fromAbove(motor, thicknessMm, berth);
  return fromAft(motor, berth);
}

/** Screw, pad and handle inside the boat, where the screws' height is known. */
function screw(at: (f: number, v: number) => Flat, t: number, drop: number, swing: number): Mark[] {
  const bar = (fromF: number, toF: number, half: number) => [
    at(fromF, -drop - half),
    at(toF, -drop - half),
    at(toF, -drop + half),
    at(fromF, -drop + half),
  ];
  return [
    outline(bar(t, t + 7, 19), { fill: "paper", of: "clamp pad" }),
    outline(bar(t + 7, t + 58, 6), { fill: "paper", of: "clamp screw" }),
    outline(bar(t + 58, t + 68, Math.min(swing, 42)), { fill: "paper", of: "clamp handle" }),
  ];
}

function fromPort(motor: MotorValues, thicknessMm: number | undefined, berth: Berth): Mark[] {
  const { bracketDropMm: drop, tiltAxisForwardMm: forward, tiltAxisAboveMm: above } = motor;
  if (drop === undefined) return [];
  const at = (f: number, v: number) => fromBracket("profile", [f, 0, v] as BracketPoint, berth);
  const t = thicknessMm ?? 30;
  const inner = motor.screwDropMm;
  const legEnd = inner === undefined ? -30 : -inner - 14;
  const head = Math.max(18, (above ?? 0) + 16);
  const marks: Mark[] = [];
  if (inner !== undefined) marks.push(...screw(at, t, inner, motor.handleSwingMm ?? 30));
  const hook = [
    at(-11, -drop),
    at(0, -drop),
    at(0, 0),
    at(t + 14, 0),
    at(t + 14, legEnd),
    at(t + 30, legEnd),
    at(t + 30, 10),
    at(t + 20, 20),
  ];
  const lid =
    forward === undefined || above === undefined ? [at(-11, head)] : [at(forward + 20, head), at(-11, head)];
  marks.push(outline([...hook, ...lid], { fill: "paper", of: "bracket" }));
  if (forward !== undefined && above !== undefined) {
    marks.push(arc(at(forward, above), TUBE, [0, 360], { fill: "paper", of: "tilt tube" }));
    marks.push(arc(at(forward, above), 0.45 * TUBE, [0, 360], { line: "dimension", of: "tilt tube" }));
  }
  return marks;
}

function fromAbove(motor: MotorValues, thicknessMm: number | undefined, berth: Berth): Mark[] {
  const { bracketWidthMm: wide, tiltAxisForwardMm: forward, tiltAxisAboveMm: above } = motor;
  if (wide === undefined) return [];
  const t = thicknessMm ?? 30;
  const at = (f: number, y: number, v = 0) => fromBracket("plan", [f, y, v] as BracketPoint, berth);
  const half = wide / 2;
  const marks: Mark[] = [];
  for (const hand of [-1, 1]) {
    const [outer, inner] = [hand * half, hand * half * 0.68];
    const screwAt = (outer + inner) / 2;
    marks.push(
      outline(
        [at(t + 58, screwAt - 6), at(t + 30, screwAt - 6), at(t + 30, screwAt + 6), at(t + 58, screwAt + 6)],
        { fill: "paper", of: "clamp screw" },
      ),
    );
    marks.push(
      outline(
        [
          at(t + 58, screwAt - 30),
          at(t + 68, screwAt - 30),
          at(t + 68, screwAt + 30),
          at(t + 58, screwAt + 30),
        ],
        { fill: "paper", of: "clamp handle" },
      ),
    );
    marks.push(
      outline([at(-11, outer), at(t + 30, outer), at(t + 30, inner), at(-11, inner)], {
        fill: "paper",
        of: "bracket",
      }),
    );
  }
  if (forward !== undefined && above !== undefined) {
    const tube = [
      at(forward - TUBE, half, above),
      at(forward + TUBE, half, above),
      at(forward + TUBE, -half, above),
      at(forward - TUBE, -half, above),
    ];
    marks.push(outline(tube, { fill: "paper", of: "tilt tube" }));
  }
  return marks;
}

function fromAft(motor: MotorValues, berth: Berth): Mark[] {
  const { bracketWidthMm: wide, bracketDropMm: drop } = motor;
  if (wide === undefined || drop === undefined) return [];
  const at = (y: number, v: number) => fromBracket("elevation", [0, y, v] as BracketPoint, berth);
  const head = Math.max(18, (motor.tiltAxisAboveMm ?? 0) + 16);
  const marks: Mark[] = [1, -1].map((hand) => {
    const [outer, inner] = [hand * wide * 0.5, hand * wide * 0.32];
    const cheek = [
      at(outer, 0),
      at(outer, head),
      at(inner, head),
      at(inner, -drop),
      at(hand * wide * 0.42, -drop),
    ];
    return outline(silhouette(cheek), { fill: "paper", of: "bracket" });
  });
  if (motor.tiltAxisAboveMm !== undefined) {
    const [low, high] = [motor.tiltAxisAboveMm - TUBE, motor.tiltAxisAboveMm + TUBE];
    marks.push(
      outline([at(-wide / 2, low), at(wide / 2, low), at(wide / 2, high), at(-wide / 2, high)], {
        fill: "paper",
        of: "tilt tube",
      }),
    );
  }
  return marks;
}

/** A centre cross at a point, `arms` true mm long. */
export const cross = (at: Flat, arms: number): Mark[] => [
  line(
    [
      [at[0] - arms, at[1]],
      [at[0] + arms, at[1]],
    ],
    { line: "centre", of: "centre" },
  ),
  line(
    [
      [at[0], at[1] - arms],
      [at[0], at[1] + arms],
    ],
    { line: "centre", of: "centre" },
  ),
];
