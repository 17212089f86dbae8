import type { ReactNode } from "react";

/** A page's heading as a title strip: the kind of sheet, its title, and its particulars in ruled cells. */
export function TitleStrip({
  kind,
  title,
  particulars = [],
  children,
}: {
  kind?: string;
  title: string;
  particulars?: readonly (readonly [name: string, value: ReactNode])[];
  children?: ReactNode;
}) {
  return (
    <div className="strip">
      <div className="strip-title">
        {kind && <p className="strip-kind">{kind}</p>}
        <h1>{title}</h1>
        {children}
      </div>
      {particulars.length > 0 && (
        <dl className="cells">
          {particulars.map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
        </dl>
      )}
    </div>
  );
}
