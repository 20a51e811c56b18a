-- What virtual builds of a revision came to, to be laid beside its trials.
CREATE TABLE prediction (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    at TEXT NOT NULL CHECK (at GLOB '????-??-??T??:??:??Z'),
    note TEXT NOT NULL,
    struck TEXT,
    revision INTEGER NOT NULL REFERENCES revision (id),
    seed INTEGER NOT NULL,
    builds INTEGER NOT NULL CHECK (builds > 0),
    passes INTEGER NOT NULL,              -- builds in which every coin passes
    numbers INTEGER NOT NULL,             -- how many were drawn for each build
    guesses INTEGER NOT NULL              -- how many of those are guesses
) STRICT;

CREATE TABLE prediction_coin (
    prediction INTEGER NOT NULL REFERENCES prediction (id),
    coin TEXT NOT NULL,
    passes INTEGER NOT NULL,
    PRIMARY KEY (prediction, coin)
) STRICT;

-- Builds that fail, by the first cause.
CREATE TABLE prediction_cause (
    prediction INTEGER NOT NULL REFERENCES prediction (id),
    cause TEXT NOT NULL,
    builds INTEGER NOT NULL CHECK (builds > 0),
    PRIMARY KEY (prediction, cause)
) STRICT;
