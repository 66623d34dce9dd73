-- When each device that works at a car was last heard of, and how much it held back then.
create table heard (
    job text not null references job (id),
    device text not null,
    by_name text not null default '',
    at text not null,
    unsent integer not null default 0,
    ahead_seconds integer not null default 0,
    primary key (job, device)
);
