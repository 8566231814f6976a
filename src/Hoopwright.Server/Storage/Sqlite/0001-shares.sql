-- Times are milliseconds since 1970 UTC. What a link opens is found by the hash of its token; the token itself is never kept.
CREATE TABLE store (name TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT;

CREATE TABLE share (
  id           TEXT    NOT NULL PRIMARY KEY,
  made_at      INTEGER NOT NULL,
  version      INTEGER NOT NULL,
  document     TEXT    NOT NULL,
  cursor       INTEGER NOT NULL,
  entry_bytes  INTEGER NOT NULL,
  audit_number INTEGER NOT NULL
) STRICT;

CREATE TABLE link (
  id         TEXT    NOT NULL PRIMARY KEY,
  share_id   TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  kind       TEXT    NOT NULL,
  token_hash BLOB    NOT NULL UNIQUE,
  label      TEXT,
  made_at    INTEGER NOT NULL,
  revoked_at INTEGER
) STRICT;
CREATE INDEX link_by_share ON link (share_id);

CREATE TABLE entry (
  share_id      TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  cursor        INTEGER NOT NULL,
  id            TEXT    NOT NULL,
  hash          BLOB    NOT NULL,
  body          TEXT    NOT NULL,
  ahead_seconds INTEGER,
  PRIMARY KEY (share_id, cursor),
  UNIQUE (share_id, id, hash)
) STRICT;

CREATE TABLE audit (
  share_id TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  number   INTEGER NOT NULL,
  at       INTEGER NOT NULL,
  link_id  TEXT    NOT NULL,
  by_name  TEXT,
  what     TEXT    NOT NULL,
  detail   TEXT    NOT NULL,
  PRIMARY KEY (share_id, number)
) STRICT;
