-- What each finished job taught, so that no price has to read ledgers. It follows from the ledgers and may be worked out anew:
-- taught says of which state of the job it holds, lesson is one thing that was seen.

create table taught (
    job text primary key references job (id),
    version integer not null,
    events integer not null,
    at text not null
);

-- family is the stock sheet that the car is described by; kind says which of the figures are there.
create table lesson (
    job text not null references taught (job),
    number integer not null,
    family text not null,
    kind text not null check (kind in ('open', 'close', 'rust', 'resort')),
    about text not null,
    minutes text not null default '',
    grade integer not null default 0,
    yes integer not null default 0,
    of_all integer not null default 0,
    primary key (job, number)
);
create index lesson_by_family on lesson (family);
