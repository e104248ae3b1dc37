// Plans and runs in the database of a browser (IndexedDB), as the JSON that they write themselves. `fromJSON` reads whatever the
// library wrote, so one store keeps plans, runs, stocks and routes.
import { fromJSON } from "preparative";

/** A request of IndexedDB as a promise. */
const done = <T>(request: IDBRequest<T>): Promise<T> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

export async function openStore(name: string) {
  const opening = indexedDB.open(name, 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore("records");
  const database = await done(opening);
  const records = (mode: IDBTransactionMode) => database.transaction("records", mode).objectStore("records");
  return {
    /** Keep anything that has a `toJSON` under a name of your own. */
    async put(key: string, value: { toJSON(): unknown }): Promise<void> {
      // a structured clone keeps plain data only
      await done(records("readwrite").put(JSON.parse(JSON.stringify(value)), key));
    },
    /** What was kept, made again; undefined where nothing was. */
    async get(key: string) {
      const record: unknown = await done(records("readonly").get(key));
      return record === undefined ? undefined : fromJSON(record);
    },
    keys: async (): Promise<string[]> => (await done(records("readonly").getAllKeys())).map(String),
    close: () => database.close(),
  };
}
