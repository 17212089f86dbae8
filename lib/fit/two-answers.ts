/** The questions about two motors on one stern, each with its margin and spread. Limits are common practice, no source. */

import { nameOfKey } from "#lib/checks/key-names.ts";
import { obstacleName } from "#lib/checks/moving-room.ts";
import type { TwoAnswer, TwoBerth, TwoBetween } from "#lib/fit/two-report.ts";
import { verdictOf } from "#lib/fit/verdict.ts";
import type { Clearance } from "#lib/geometry/clearance.ts";
import type { Pose } from "#lib/geometry/mechanism.ts";
import { COVERAGE_FACTOR, combined, standardUncertainty, type Tape } from "#lib/quantity/uncertainty.ts";
import { inDegrees, type LengthWriter } from "#lib/quantity/words.ts";
import { type Motor, type MotorKey, type MotorValues, motorFields } from "#lib/rig/motor.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { type Berthed, inNotch, obstaclesAt, roomAt, roomBetween, roomHeld } from "#lib/rig/pair.ts";
import { missingOfParts } from "#lib/rig/parts.ts";
import { motorValues, sternValues, takenOf } from "#lib/rig/record.ts";
import { type Stern, type SternKey, type SternValues, sternFields } from "#lib/rig/stern.ts";
import { BESIDE_BRACKET, BETWEEN_MOTORS } from "#lib/standards/afloat-practice.ts";
import { practiceLimits } from "#lib/standards/common-practice.ts";
import type { Standard } from "#lib/standards/standard.ts";

/** Both motors and the stern as plain numbers: what a margin is worked out from. */
interface Scene {
  readonly motors: readonly [MotorValues, MotorValues];
  readonly stern: SternValues;
}

interface Asked {
  readonly scene: Scene;
  readonly labels: readonly [string, string];
  readonly berths: readonly [TwoBerth, TwoBerth];
  readonly write: LengthWriter;
  /** Standard uncertainty of a margin: each number moved by its own, the others held. */
  spread(margin: (scene: Scene) => number): number;
}

type Missing = { readonly of: string; readonly key: string }[];

/** Every question about the two, and the room between them. */
export function moreAnswers(
  motors: readonly [Motor, Motor],
  stern: Stern,
  berths: readonly [TwoBerth, TwoBerth],
  { tape, write }: { readonly tape?: Tape | undefined; readonly write: LengthWriter },
): { readonly answers: TwoAnswer[]; readonly between?: TwoBetween } {
  const scene: Scene = {
    motors: [motorValues(motors[0]), motorValues(motors[1])],
    stern: sternValues(stern),
  };
  const asked: Asked = {
    scene,
    labels: [motors[0].label, motors[1].label],
    berths,
    write,
    spread: (margin) =>
      spreadOf(margin, scene, [takenOf(motors[0], stern, tape), takenOf(motors[1], stern, tape)]),
  };
  const found = apart(asked);
  return {
    answers: [
      spacing(asked),
      found.answer,
      onNotch(asked),
      onTransom(asked),
      clearOfStern(asked, 0),
      clearOfStern(asked, 1),
    ],
    ...(found.between && { between: found.between }),
  };
}

type Lookups = readonly [ReturnType<typeof takenOf>, ReturnType<typeof takenOf>];

function spreadOf(margin: (scene: Scene) => number, scene: Scene, lookups: Lookups): number {
  const part = (halfWidth: number, move: (by: number) => Scene): number => {
    const u = standardUncertainty(halfWidth);
    return u === 0 ? 0 : (margin(move(u)) - margin(move(-u))) / 2;
  };
  const moved = <V extends object>(values: V, key: string, by: number): V => {
    const was = (values as Record<string, unknown>)[key];
    return {
      ...values,
      [key]: Array.isArray(was) ? was.map((each: number) => each + by) : (was as number) + by,
    };
  };
  const ofMotors = ([0, 1] as const).flatMap((i) =>
    (Object.keys(motorFields) as MotorKey[]).map((key) => {
      const entry = lookups[i](key);
      const at = (by: number) =>
        scene.motors.with(i, moved(scene.motors[i], key, by)) as unknown as Scene["motors"];
      return entry ? part(entry.halfWidth, (by) => ({ ...scene, motors: at(by) })) : 0;
    }),
  );
  const ofStern = (Object.keys(sternFields) as SternKey[]).map((key) => {
    const entry = lookups[0](key as RigKey);
    return entry ? part(entry.halfWidth, (by) => ({ ...scene, stern: moved(scene.stern, key, by) })) : 0;
  });
  return combined([...ofMotors, ...ofStern]);
}

interface Words {
  readonly id: string;
  readonly question: string;
  readonly says: string;
  readonly have: number;
  readonly limit: Standard;
}

function settled(
  { id, question, says, have, limit }: Words,
  margin: number,
  u: number,
  write: LengthWriter,
): TwoAnswer {
  const outcome = verdictOf(margin, u);
  const U = COVERAGE_FACTOR * u;
  const room = margin < 0 ? `${write(-margin)} short` : `${write(margin)} to spare`;
  return {
    id,
    question,
    outcome,
    marginMm: margin,
    expandedUncertaintyMm: U,
    have,
    need: limit.value,
    limit: { value: limit.value, source: limit.source, status: limit.status },
    says: `${says}: ${room}${u > 0 ? `, give or take ${write(U)}` : ""}${outcome === "cannot tell" ? ": too close to tell" : ""}.`,
  };
}

const untold = (id: string, question: string, missing: Missing): TwoAnswer => ({
  id,
  question,
  outcome: "cannot tell",
  says: `Not known: ${missing.map(({ of, key }) => `${nameOfKey(key)} (${of})`).join(", ")}.`,
  missing,
});

const missingOf = ({ scene, labels }: Asked, key: MotorKey): Missing =>
  ([0, 1] as const).flatMap((i) => (scene.motors[i][key] === undefined ? [{ of: labels[i], key }] : []));

const both = (width: (motor: MotorValues) => number, { motors }: Scene): number =>
  (width(motors[0]) + width(motors[1])) / 2;

/** Do the two brackets stand beside each other? */
function spacing(asked: Asked): TwoAnswer {
  const [id, question] = ["spacing", "Do the two brackets stand clear beside each other?"];
  const missing = missingOf(asked, "bracketWidthMm");
  if (missing.length > 0) return untold(id, question, missing);
  const apartMm = Math.abs(asked.berths[0].offsetMm - asked.berths[1].offsetMm);
  const room = (scene: Scene) => apartMm - both((motor) => motor.bracketWidthMm!, scene);
  const have = room(asked.scene);
  const says = `The motors stand ${asked.write(apartMm)} apart, middle to middle, and their brackets are ${have < 0 ? `${asked.write(-have)} into each other` : `${asked.write(have)} apart`}; ${asked.write(BESIDE_BRACKET.value)} is wanted`;
  const margin = (scene: Scene) => room(scene) - BESIDE_BRACKET.value;
  return settled(
    { id, question, says, have, limit: BESIDE_BRACKET },
    margin(asked.scene),
    asked.spread(margin),
    asked.write,
  );
}

/** Do they clear each other however each is tilted and steered? */
function apart(asked: Asked): { readonly answer: TwoAnswer; readonly between?: TwoBetween } {
  const [id, question] = [
    "between",
    "Do the two motors clear each other however each is tilted and steered?",
  ];
  const missing: Missing = [
    ...([0, 1] as const).flatMap((i) =>
      missingOfParts(asked.scene.motors[i]).map((key) => ({ of: asked.labels[i], key })),
    ),
    ...seatsMissing(asked),
  ];
  const { rakeDeg } = asked.scene.stern;
  const [one, other] = [berthed(asked, 0, asked.scene), berthed(asked, 1, asked.scene)];
  const found = rakeDeg === undefined || !one || !other ? undefined : roomBetween(one, other, rakeDeg);
  if (!found) return { answer: untold(id, question, missing) };
  const limit = BETWEEN_MOTORS;
  const room = roomHeld(found, [one!, other!], rakeDeg!);
  const held = (scene: Scene) => room(berthed(asked, 0, scene)!, berthed(asked, 1, scene)!) - limit.value;
  const [p, q] = found.partIds.map((part) => PARTS[part] ?? part);
  const where = `with the ${p} of ${asked.labels[0]} ${attitude(found.poses[0])} and the ${q} of ${asked.labels[1]} ${attitude(found.poses[1])}`;
  const says = `${found.mm < 0 ? `They strike each other, ${asked.write(-found.mm)} deep,` : `They pass ${asked.write(found.mm)} from each other`} ${where}; ${asked.write(limit.value)} is wanted`;
  const answer = settled(
    { id, question, says, have: found.mm, limit },
    found.mm - limit.value,
    asked.spread(held),
    asked.write,
  );
  const between = { mm: found.mm, certifiedMm: found.lowerMm, parts: found.partIds, poses: found.poses };
  // A foul of parts that are known stands even where others are not.
  if (missing.length > 0 && answer.outcome !== "fouls") return { answer: untold(id, question, missing) };
  return { answer, between };
}

const PARTS: Readonly<Record<string, string>> = { cowl: "cowl", midsection: "leg", tiller: "tiller" };

function attitude({ faceAngleDeg, steeringDeg }: Pose): string {
  const steer =
    Math.abs(steeringDeg) < 0.05
      ? "straight"
      : `${inDegrees(Math.abs(steeringDeg))} to ${steeringDeg > 0 ? "port" : "starboard"}`;
  return `(leg at ${inDegrees(faceAngleDeg)}, steering ${steer})`;
}

const seatsMissing = ({ berths, scene }: Asked): Missing => [
  ...(berths.some(({ seatMm }) => seatMm === undefined)
    ? [{ of: "the stern", key: scene.stern.seatMm === undefined ? "seatMm" : "transomTopMm" }]
    : []),
  ...(scene.stern.rakeDeg === undefined ? [{ of: "the stern", key: "rakeDeg" }] : []),
];

function berthed({ berths }: Asked, i: 0 | 1, scene: Scene): Berthed | undefined {
  const { offsetMm, seatMm } = berths[i];
  return seatMm === undefined ? undefined : { motor: scene.motors[i], offsetMm, seatMm };
}

/** Does each bracket come down wholly in the notch or wholly beside it? */
function onNotch(asked: Asked): TwoAnswer {
  const [id, question] = ["notch", "Does each bracket come down wholly in the notch or wholly beside it?"];
  const { notchWidthMm } = asked.scene.stern;
  if (notchWidthMm === undefined)
    return { id, question, outcome: "not asked", says: "Nothing is cut: both sit on a straight top." };
  const missing = missingOf(asked, "bracketWidthMm");
  if (missing.length > 0) return untold(id, question, missing);
  const limit: Standard = practiceLimits.bracketMm;
  const room = (scene: Scene, i: 0 | 1) => {
    const [off, half] = [Math.abs(asked.berths[i].offsetMm), scene.motors[i].bracketWidthMm! / 2];
    const cut = scene.stern.notchWidthMm! / 2;
    return inNotch(asked.scene.stern, off)
      ? cut - (scene.stern.notchCornerRadiusMm ?? 0) - off - half
      : off - half - cut;
  };
  const tighter = room(asked.scene, 0) <= room(asked.scene, 1) ? 0 : 1;
  const margin = (scene: Scene) => room(scene, tighter) - limit.value;
  const where = inNotch(asked.scene.stern, asked.berths[tighter].offsetMm)
    ? "in the flat of the notch"
    : "on the top beside the notch";
  const says = `${asked.labels[tighter]} sits ${where}`;
  return settled(
    { id, question, says, have: room(asked.scene, tighter), limit },
    margin(asked.scene),
    asked.spread(margin),
    asked.write,
  );
}

/** Is the transom wide enough for both? */
function onTransom(asked: Asked): TwoAnswer {
  const [id, question] = ["transom-width", "Is the transom wide enough for both?"];
  const missing = [
    ...missingOf(asked, "bracketWidthMm"),
    ...(asked.scene.stern.transomWidthMm === undefined ? [{ of: "the stern", key: "transomWidthMm" }] : []),
  ];
  if (missing.length > 0) return untold(id, question, missing);
  const room = (scene: Scene, i: 0 | 1) =>
    scene.stern.transomWidthMm! / 2 -
    Math.abs(asked.berths[i].offsetMm) -
    scene.motors[i].bracketWidthMm! / 2;
  const outer = room(asked.scene, 0) <= room(asked.scene, 1) ? 0 : 1;
  const have = room(asked.scene, outer);
  const margin = (scene: Scene) => room(scene, outer) - BESIDE_BRACKET.value;
  const says = `The bracket of ${asked.labels[outer]} ends ${have < 0 ? `${asked.write(-have)} beyond` : `${asked.write(have)} inside`} the transom's side; ${asked.write(BESIDE_BRACKET.value)} is wanted`;
  return settled(
    { id, question, says, have, limit: BESIDE_BRACKET },
    margin(asked.scene),
    asked.spread(margin),
    asked.write,
  );
}

/** Does a motor clear the stern where it sits? */
function clearOfStern(asked: Asked, i: 0 | 1): TwoAnswer {
  const id = i === 0 ? "first-clear" : "second-clear";
  const question = `Does ${asked.labels[i]} steer and tilt clear of the stern where it sits?`;
  const missing: Missing = [
    ...missingOfParts(asked.scene.motors[i]).map((key) => ({ of: asked.labels[i], key })),
    ...seatsMissing(asked),
  ];
  const each = berthed(asked, i, asked.scene);
  const rooms = each
    ? obstaclesAt(asked.scene.stern, each).flatMap((obstacle) => {
        const found = roomAt(asked.scene.stern, each, obstacle);
        return found ? [{ obstacle, found }] : [];
      })
    : [];
  const [tightest] = rooms.sort((a, b) => a.found.mm - b.found.mm);
  if (!each || !tightest) {
    return missing.length > 0
      ? untold(id, question, missing)
      : { id, question, outcome: "not asked", says: "Nothing of the stern stands in its way." };
  }
  const answer = sternAnswer(asked, i, { id, question }, tightest);
  return missing.length > 0 && answer.outcome !== "fouls" ? untold(id, question, missing) : answer;
}

function sternAnswer(
  asked: Asked,
  i: 0 | 1,
  words: { readonly id: string; readonly question: string },
  { obstacle, found }: { readonly obstacle: string; readonly found: Clearance },
): TwoAnswer {
  const limit: Standard = practiceLimits.obstacleRoomMm;
  const hold = { found, was: asked.scene.motors[i] };
  const margin = (scene: Scene) =>
    (roomAt(scene.stern, berthed(asked, i, scene)!, obstacle, hold)?.mm ?? found.mm) - limit.value;
  const part = PARTS[found.partId] ?? found.partId;
  const says = `The ${part} ${found.mm < 0 ? `strikes ${obstacleName(obstacle)}, ${asked.write(-found.mm)} into it` : `passes ${asked.write(found.mm)} from ${obstacleName(obstacle)}`} ${attitude(found.pose)}; ${asked.write(limit.value)} is wanted`;
  return settled(
    { ...words, says, have: found.mm, limit },
    found.mm - limit.value,
    asked.spread(margin),
    asked.write,
  );
}
