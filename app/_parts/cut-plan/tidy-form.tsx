"use client";

import { type ReactNode, useEffect, useRef } from "react";

/** A form whose answer stands in the address: boxes left empty are left out of it. Without script they stand there empty. */
export function TidyForm({
  action,
  label,
  className,
  children,
}: {
  readonly action: string;
  readonly label: string;
  readonly className?: string | undefined;
  readonly children: ReactNode;
}) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const own = form.current;
    const tidy = ({ formData }: FormDataEvent) => {
      for (const [name, value] of [...formData]) if (value === "") formData.delete(name);
    };
    own?.addEventListener("formdata", tidy);
    return () => own?.removeEventListener("formdata", tidy);
  }, []);
  return (
    <form ref={form} action={action} aria-label={label} className={className}>
      {children}
    </form>
  );
}
