import Link from "next/link";
import { type Asked, queryFor } from "#app/_parts/report/asked.ts";

/** Says that the report shows the motor handled in another way than usual, and how to go back. */
export function Tried({ asked }: { readonly asked: Asked }) {
  const tried = [
    asked.straight && "the motor held straight while it tilts",
    asked.fold && "the tiller folded up before tilting",
    asked.hole !== undefined && `the pin in hole ${asked.hole} from the bottom`,
  ].filter(Boolean);
  if (tried.length === 0) return null;
  return (
    <p className="notice">
      <strong>Tried:</strong> {tried.join("; ")}. Everything below is worked out so. Nothing is stored.{" "}
      <Link
        href={queryFor(asked, { straight: false, fold: false, hole: undefined })}
        scroll={false}
        className="not-printed"
      >
        Back to how it is
      </Link>
    </p>
  );
}
