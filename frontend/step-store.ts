import type { Entry, StepStore } from './step-records';

const NAME = 'drylap-steps';

function asked<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

/** Resolves once the change is on the disk, so that nothing is called kept that a crash could take. */
function kept(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = transaction.onerror = () => reject(transaction.error);
  });
}

/** The browser's own database. */
export class PhoneStore implements StepStore {
  private constructor(private readonly db: IDBDatabase) {}

  static async open(): Promise<PhoneStore> {
    const request = indexedDB.open(NAME, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('waiting', { keyPath: 'seq', autoIncrement: true });
      request.result.createObjectStore('known');
    };
    return new PhoneStore(await asked(request));
  }

  entries(): Promise<Entry[]> {
    return asked(this.db.transaction('waiting').objectStore('waiting').getAll() as IDBRequest<Entry[]>);
  }

  add(entry: Entry): Promise<void> {
    return this.change('waiting', (store) => store.add(entry));
  }

  replace(entry: Entry): Promise<void> {
    return this.change('waiting', (store) => store.put(entry));
  }

  remove(seq: number): Promise<void> {
    return this.change('waiting', (store) => store.delete(seq));
  }

  recall<T>(name: string): Promise<T | undefined> {
    return asked(this.db.transaction('known').objectStore('known').get(name) as IDBRequest<T | undefined>);
  }

  remember(name: string, what: unknown): Promise<void> {
    return this.change('known', (store) => store.put(what, name));
  }

  revise<T>(name: string, how: (known: T | undefined) => T | undefined): Promise<void> {
    return this.change('known', (store) => {
      const asking = store.get(name) as IDBRequest<T | undefined>;
      asking.onsuccess = () => {
        const next = how(asking.result);
        if (next !== undefined) store.put(next, name);
      };
    });
  }

  forget(prefix: string): Promise<void> {
    return this.change('known', (store) => store.delete(IDBKeyRange.bound(prefix, prefix + '\uffff')));
  }

  private change(name: string, how: (store: IDBObjectStore) => unknown): Promise<void> {
    const transaction = this.db.transaction(name, 'readwrite', { durability: 'strict' });
    how(transaction.objectStore(name));
    return kept(transaction);
  }
}
