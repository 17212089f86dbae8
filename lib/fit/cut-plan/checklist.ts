/**
 * The work in building order, with a word of caution where it matters.
 */
import type { NotchPlan } from "#lib/fit/cut-plan/notch.ts";

/** One thing to do. */
export interface Step {
  readonly id: string;
  readonly says: string;
  readonly cautions: readonly string[];
}

/** What every plan says of itself. */
export const ADVICE: readonly string[] = [
  "This plan is advice to a competent person, who measures again before sawing and answers for the work.",
  "Local codes and the capacity label govern over it; where the law asks for licensed practice, have the work done or signed by one who holds the licence.",
];

const PROPPED =
  "Prop the hull so that it cannot roll or tip while you lean and saw on it, and chock the trailer.";
const PLUNGE =
  "Start a plunge cut with the shoe held down and the blade already turning; keep out of its line, for it can climb out at you.";
const KICKBACK = "A blade that binds kicks back: keep the kerf open, do not force it, stand to one side.";
const RINGS = "Take off rings and watch, roll up sleeves, and wear no gloves at turning tools.";
const DUST = "Wear a mask against wood and laminate dust, and eye and ear protection.";
const FUMES =
  "Epoxy and spirit give off fumes and spirit burns: air the place, gloves on, no flame or spark, rags spread out to dry.";
const HANGING =
  "A hanging motor falls: two people or a hoist, a line made fast to the boat, and nobody's feet under it.";

const step = (id: string, says: string, ...cautions: string[]): Step => ({ id, says, cautions });

const BEFORE: readonly Step[] = [
  step("prop", "Prop the hull with its keel line level and check it with a long level.", PROPPED),
  step(
    "ruler",
    "Print the check page at full size and lay a steel rule on it before any template is trusted.",
  ),
  step("measure", "Measure rake, thickness and the top of the transom once more against the plan's figures."),
  step(
    "behind",
    "Look behind the transom: take off fittings, cables and fuel lines that the saw could reach.",
  ),
];

const NOTCH: readonly Step[] = [
  step(
    "mark-notch",
    "Strike the centreline, lay off the half widths to port and to starboard from it, and the depth down the face.",
  ),
  step("bore-corners", "Bore the two corner holes square to the face.", RINGS, DUST),
  step(
    "saw-notch",
    "Saw the cheeks down to the holes and the seat between them, leaving the line on; stop where each cut enters its hole.",
    PLUNGE,
    KICKBACK,
    RINGS,
    DUST,
    PROPPED,
  ),
  step(
    "check-notch",
    "Measure the notch as it is and put the figures in the as-built form before anything more comes off.",
  ),
  step("seal-notch", "Round the arrises, seal every bare edge with three coats and let them cure.", FUMES),
];

const WELL: readonly Step[] = [
  step(
    "mark-well",
    "Mark the support line across the transom and the height of the sole on both sides, aft and at the front.",
  ),
  step(
    "cut-parts",
    "Rip, bevel and mitre the parts as the saw settings say, long rather than short; try each bevel on an offcut.",
    KICKBACK,
    RINGS,
    DUST,
  ),
  step(
    "dry-fit",
    "Set the parts up dry, port and starboard as they are lettered, and plane where they bear.",
  ),
  step(
    "cleats",
    "Bed and screw the aft cleat, the front beam with its cleat, and the side cleats; pilot every hole with the bit stopped.",
    RINGS,
    FUMES,
  ),
  step("sole", "Seal the sole's underside and edges, bed it on the cleats and screw it down.", FUMES),
  step("drains", "Bore the drains at the lowest corners and bed their tubes.", RINGS, DUST),
  step("fillets", "Run the fillets round all inside corners and let them cure.", FUMES, DUST),
  step("sheer", "Plane off what stands above the sheer or the finished edge."),
  step("finish", "Seal and paint; fill the well with a bucket of water and see it run out.", FUMES),
];

const AFTER: readonly Step[] = [
  step(
    "hang",
    "Hang the motor, tighten its clamps, and steer and tilt it by hand through all its range before it is run.",
    HANGING,
  ),
  step("as-built", "Measure seat, notch and well once more and keep the report made from them."),
];

/** The steps a plan asks for. */
export function checklist(notch: NotchPlan | undefined, hasWell: boolean): Step[] {
  return [...BEFORE, ...(notch && notch.action !== "none" ? NOTCH : []), ...(hasWell ? WELL : []), ...AFTER];
}
