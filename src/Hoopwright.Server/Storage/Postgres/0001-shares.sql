-- Times are milliseconds since 1970 UTC. What a link opens is found by the hash of its token; the token itself is never kept.
CREATE TABLE store (name TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL);

CREATE TABLE share (
  id           TEXT    NOT NULL PRIMARY KEY,
  made_at      BIGINT  NOT NULL,
  version      BIGINT  NOT NULL,
  document     TEXT    NOT NULL,
  cursor       BIGINT  NOT NULL,
  entry_bytes  BIGINT  NOT NULL,
  audit_number BIGINT  NOT NULL
);

CREATE TABLE link (
  id         TEXT    NOT NULL PRIMARY KEY,
  share_id   TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  kind       TEXT    NOT NULL,
  token_hash BYTEA   NOT NULL UNIQUE,
  label      TEXT,
  made_at    BIGINT  NOT NULL,
  revoked_at BIGINT
);
CREATE INDEX link_by_share ON link (share_id);

CREATE TABLE entry (
  share_id      TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  cursor        BIGINT  NOT NULL,
  id            TEXT COLLATE "C" NOT NULL, -- the order of ids is that of their letters' codes
  hash          BYTEA   NOT NULL,
  body          TEXT    NOT NULL,
  ahead_seconds BIGINT,
  PRIMARY KEY (share_id, cursor),
  UNIQUE (share_id, id, hash)
);

CREATE TABLE audit (
  share_id TEXT    NOT NULL REFERENCES share (id) ON DELETE CASCADE,
  number   BIGINT  NOT NULL,
  at       BIGINT  NOT NULL,
  link_id  TEXT    NOT NULL,
  by_name  TEXT,
  what     TEXT    NOT NULL,
  detail   TEXT    NOT NULL,
  PRIMARY KEY (share_id, number)
);
