// A request from jars that are called by what is in them, for tests that are about the reaction.
import type { PlanRequest } from "preparative";

/** What is in a jar, and its strength if it is a solution. */
export type Jar = readonly [form: string, strength?: string];

/** A plan for a portion of what is in the first jar. */
export const fromJars = (
  equation: string,
  product: string,
  jars: readonly Jar[],
  portion: string,
  more = {},
): PlanRequest =>
  ({
    equation,
    product,
    materials: jars.map(([form, strength]) => ({
      name: `jar of ${form}`,
      form,
      ...(strength === undefined ? {} : { strength }),
    })),
    scale: { material: `jar of ${jars[0]![0]}`, portion },
    ...more,
  }) as PlanRequest;
