import type { Metadata } from "next";
import Link from "next/link";
import { FieldPicture } from "#app/_parts/drawing/field-picture.tsx";
import { named } from "#app/_parts/record/named.ts";
import { TitleStrip } from "#app/_parts/sheet/title-strip.tsx";
import { comesTo } from "#app/sale/_parts/come-to.ts";
import { SaleForm } from "#app/sale/_parts/sale-form.tsx";
import { FIRST, motorOf, textsFrom, typedKeys } from "#app/sale/_parts/typed.ts";
import { SaleVerdict } from "#app/sale/_parts/verdict.tsx";
import type { Query } from "#app/shortlist/_parts/asked.ts";
import { getRecord } from "#lib/db/records.ts";
import { type MotorKey, motorFields } from "#lib/rig/motor.ts";

export const metadata: Metadata = { title: "Quick check at a sale" };
export const dynamic = "force-dynamic";

/** A motor for sale, a tape and a minute: three to six numbers, the rest from like motors, and what to measure next. */
export default async function Sale({ searchParams }: { readonly searchParams: Promise<Query> }) {
  const query = await searchParams;
  const sterns = await named("stern");
  const texts = textsFrom(query);
  const id = typeof query.stern === "string" ? query.stern : "";
  const stored = id ? await getRecord("stern", id) : null;
  const anything = Object.keys(texts).length > 0;
  const found = stored && anything ? await comesTo(motorOf(texts), stored.record) : undefined;
  const next = found?.next && found.next.key in motorFields ? found.next.key : undefined;
  const typed = typedKeys(texts);
  const shown = [...FIRST, ...typed.filter((key) => !FIRST.some((first) => first === key))];
  const boxes = [...new Set([...shown, ...(next ? [next] : [])])] as MotorKey[];
  const pictures = Object.fromEntries(boxes.map((key) => [key, <FieldPicture key={key} name={key} />]));
  return (
    <>
      <TitleStrip kind="Buying" title="Quick check at a sale">
        <p className="lead">
          Three to six numbers of the motor before you; the rest is taken from like motors until you measure
          it. Nothing is kept unless you say so.
        </p>
      </TitleStrip>
      {sterns.length === 0 ? (
        <p>
          No stern is kept yet: <Link href="/sterns/new">enter yours</Link> first, at home and with a tape.
        </p>
      ) : (
        <SaleForm
          sterns={sterns}
          stern={stored ? id : ""}
          initial={texts}
          shown={shown}
          next={next}
          pictures={pictures}
        >
          {found ? (
            <SaleVerdict found={found} stern={id} />
          ) : (
            <p className="notice">
              {stored
                ? "Type what you know of the motor: its power and its shaft class first."
                : "Pick your stern, then type what you know of the motor."}
            </p>
          )}
        </SaleForm>
      )}
    </>
  );
}
