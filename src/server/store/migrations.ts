/** Steps from an empty file to the tables of today, in order. A step that has been released is never changed. */
export const migrations: readonly string[] = [
  `CREATE TABLE documents (
     id INTEGER PRIMARY KEY,
     book TEXT NOT NULL,
     path TEXT NOT NULL,
     kind TEXT NOT NULL,
     current INTEGER NOT NULL,
     deleted INTEGER NOT NULL DEFAULT 0,
     UNIQUE (book, path)
   ) STRICT;
   CREATE TABLE revisions (
     id INTEGER PRIMARY KEY AUTOINCREMENT,
     document INTEGER NOT NULL REFERENCES documents (id),
     number INTEGER NOT NULL,
     text TEXT NOT NULL,
     saved_at TEXT NOT NULL,
     origin TEXT NOT NULL,
     tab TEXT,
     UNIQUE (document, number)
   ) STRICT;
   CREATE TABLE loads (
     book TEXT NOT NULL,
     path TEXT NOT NULL,
     digest TEXT NOT NULL,
     PRIMARY KEY (book, path)
   ) STRICT;`,
  `CREATE TABLE folders (
     folder TEXT PRIMARY KEY,
     book TEXT NOT NULL UNIQUE
   ) STRICT;`,
];
