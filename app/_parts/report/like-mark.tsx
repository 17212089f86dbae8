import look from "./doubt.module.css";

/** Stands beside whatever rests on a number nobody took on this motor. */
export function LikeMark({ said = "rests on like motors" }: { readonly said?: string }) {
  return <span className={look.likeMark}>{said}</span>;
}
