-- A state of a design, frozen: its files are in revision_file.
CREATE TABLE revision (
    id INTEGER PRIMARY KEY,
    design TEXT NOT NULL,                 -- its folder in the workshop
    number INTEGER NOT NULL CHECK (number > 0),
    name TEXT NOT NULL,                   -- as design.yaml says
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    fingerprint TEXT NOT NULL,            -- SHA-256 of its files' paths and sums
    UNIQUE (design, number)
) STRICT;

-- Bytes of files, each once however many revisions have it.
CREATE TABLE content (
    sha256 TEXT PRIMARY KEY,
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE revision_file (
    revision INTEGER NOT NULL REFERENCES revision (id),
    path TEXT NOT NULL,                   -- from the workshop's folder
    sha256 TEXT NOT NULL REFERENCES content (sha256),
    PRIMARY KEY (revision, path)
) STRICT;

-- A piece that was made.
CREATE TABLE piece (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,             -- whoever logged it made this up: the same key twice is one entry
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,                          -- why it does not count
    serial TEXT NOT NULL,
    revision INTEGER NOT NULL REFERENCES revision (id),
    batch TEXT NOT NULL
) STRICT;
CREATE UNIQUE INDEX piece_serial ON piece (serial) WHERE struck IS NULL;

-- What became of it: where it went, repairs, spare parts.
CREATE TABLE happening (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    piece INTEGER NOT NULL REFERENCES piece (id),
    what TEXT NOT NULL CHECK (what IN ('stock', 'sold', 'lent', 'placed', 'returned', 'scrapped', 'repaired', 'spare')),
    who TEXT NOT NULL,                    -- buyer, borrower, place; the part for a spare
    amount TEXT CHECK (amount NOT GLOB '*[^0-9.]*'),
    currency TEXT CHECK ((currency IS NULL) = (amount IS NULL))
) STRICT;

-- An emptying of a piece's cash box, counted by two.
CREATE TABLE taking (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    piece INTEGER NOT NULL REFERENCES piece (id),
    amount TEXT NOT NULL CHECK (amount NOT GLOB '*[^0-9.]*'),
    currency TEXT NOT NULL,
    counted_by TEXT NOT NULL,
    witnessed_by TEXT NOT NULL CHECK (witnessed_by <> counted_by),
    seal TEXT NOT NULL                    -- number of the seal that was broken
) STRICT;

-- So many tries with a coin.
CREATE TABLE trial (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    revision INTEGER NOT NULL REFERENCES revision (id),
    piece INTEGER REFERENCES piece (id),
    coin TEXT NOT NULL,
    tries INTEGER NOT NULL CHECK (tries > 0)
) STRICT;

-- The tries among them that failed, by cause.
CREATE TABLE trial_failure (
    trial INTEGER NOT NULL REFERENCES trial (id),
    cause TEXT NOT NULL,
    count INTEGER NOT NULL CHECK (count > 0),
    PRIMARY KEY (trial, cause)
) STRICT;

-- Minutes that an operation took, for so many pieces together.
CREATE TABLE timing (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    revision INTEGER NOT NULL REFERENCES revision (id),
    operation TEXT NOT NULL,
    minutes REAL NOT NULL CHECK (minutes > 0),
    pieces INTEGER NOT NULL CHECK (pieces > 0)
) STRICT;

-- Something measured; what was read is in reading.
CREATE TABLE measured (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    kind TEXT NOT NULL,                   -- kerf, friction, bucket, sheet, rod
    about TEXT NOT NULL                   -- two surfaces, a sheet, a rod; nothing for kerf
) STRICT;

CREATE TABLE reading (
    measured INTEGER NOT NULL REFERENCES measured (id),
    place INTEGER NOT NULL,               -- in the order in which it was read
    name TEXT NOT NULL,
    value REAL NOT NULL,
    PRIMARY KEY (measured, place)
) STRICT;
