// Some columns of a large table. Whoever names a substance needs no density and no registry number: the build writes each column
// as a text of its own, so that a program carries, and takes apart, those alone which it asks for.
import { once } from "./memo";

type NamesOf<Row> = Row extends unknown ? keyof Row : never;

/** A row with some of its cells only. */
type Cells<Row, Name extends PropertyKey> = Row extends unknown ? Pick<Row, Extract<keyof Row, Name>> : never;

/** The rows of a table in their order, each with the named cells that it has. */
export function columns<Row extends object, const Name extends NamesOf<Row>>(
  table: () => readonly Row[],
  names: readonly Name[],
): () => readonly Cells<Row, Name>[] {
  return once(() =>
    table().map((row) => {
      const has = names.filter((name) => name in row);
      return Object.fromEntries(has.map((name) => [name, (row as Record<PropertyKey, unknown>)[name]])) as Cells<
        Row,
        Name
      >;
    }),
  );
}
