import type { Kind } from "#lib/db/kind.ts";

/** What has just happened to the record, as the address says. */
export function RecordNotices({
  kind,
  query,
}: {
  kind: Kind;
  query: Readonly<Record<string, string | string[] | undefined>>;
}) {
  if (query.saved)
    return (
      <Word says={`Saved. Pick a ${kind === "motor" ? "stern" : "motor"} below to see whether they suit.`} />
    );
  if (query.restored) return <Word says={`Brought back, as it was.`} />;
  if (query.changed)
    return (
      <Word
        says={`Not removed: somebody changed this ${kind} meanwhile. Look it over, then remove it if you still want to.`}
      />
    );
  return null;
}

function Word({ says }: { says: string }) {
  return (
    <p className="notice" role="status">
      {says}
    </p>
  );
}
