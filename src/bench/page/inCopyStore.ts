const DATABASE = "tackstitch-bench";
const STORE = "copies";

/** A browser may refuse to keep anything (private windows); then there is no copy, and nothing else is lost. */
export function inCopyStore(mode: IDBTransactionMode, use: (store: IDBObjectStore) => IDBRequest): Promise<unknown> {
  return new Promise((resolve) => {
    const opening = indexedDB.open(DATABASE, 1);
    opening.onupgradeneeded = () => opening.result.createObjectStore(STORE);
    opening.onerror = () => resolve(undefined);
    opening.onsuccess = () => {
      const database = opening.result;
      const request = use(database.transaction(STORE, mode).objectStore(STORE));
      const done = (result: unknown) => {
        database.close();
        resolve(result);
      };
      request.onsuccess = () => done(request.result);
      request.onerror = () => done(undefined);
    };
  });
}
