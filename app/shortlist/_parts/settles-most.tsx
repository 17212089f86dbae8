import Link from "next/link";
import { keyName, keyOwner } from "#app/_parts/key-name.ts";
import type { RigKey } from "#lib/rig/mounting.ts";
import { fieldOf } from "#lib/rig/record.ts";

/** The measurement that settles most of the list, and how it is taken. */
export function SettlesMost({
  settles,
  stern,
  id,
}: {
  readonly settles: readonly { readonly key: string; readonly pairings: number }[];
  /** True where the list is a stern's. */
  readonly stern: boolean;
  readonly id: string;
}) {
  const [first] = settles;
  if (!first) return null;
  const { key, pairings } = first;
  const fact = key === "steering" || key === "shaftClass";
  const name = keyName(key);
  const ofOne = (keyOwner(key) === "stern") === stern;
  const many = pairings === 1 ? "One pairing" : `${pairings.toLocaleString("en-GB")} pairings`;
  return (
    <section className="notice kept-together" aria-labelledby="settles">
      <h2 id="settles">
        {fact ? "Find out" : "Measure"} next: {name.charAt(0).toLowerCase() + name.slice(1)}
      </h2>
      <p>
        {many} that cannot be told yet {pairings === 1 ? "waits" : "wait"} for it first
        {ofOne ? `: taken once on this ${stern ? "stern" : "motor"}, it serves them all.` : "."}
      </p>
      {!fact && <p>{fieldOf(key as RigKey).take}</p>}
      {ofOne && (
        <p className="not-printed">
          <Link className="button main" href={`/${stern ? "sterns" : "motors"}/${id}/edit#${key}`}>
            Enter it
          </Link>
        </p>
      )}
    </section>
  );
}
