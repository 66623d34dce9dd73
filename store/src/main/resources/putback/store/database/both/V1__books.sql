-- Times are text in UTC with milliseconds, so that they sort and mean the same in both databases; money is decimal text.
-- Every row that people edit carries a version: a change names the version it saw, and is refused when there is a newer one.

create table person (
    id text primary key,
    garage text not null,
    name text not null,
    role text not null check (role in ('owner', 'mechanic')),
    password text,
    active integer not null default 1,
    version integer not null default 1
);
create unique index person_by_name on person (garage, name);

create table device (
    id text primary key,
    garage text not null,
    name text not null,
    secret text not null unique,
    paired_at text not null,
    paired_by text references person (id),
    seen_at text,
    ended_at text
);

create table pairing (
    code text primary key,
    garage text not null,
    made_by text references person (id),
    expires_at text not null,
    used_at text
);

create table session (
    token text primary key,
    garage text not null,
    person text not null references person (id),
    device text references device (id),
    started_at text not null,
    expires_at text not null
);

create table customer (
    id text primary key,
    garage text not null,
    name text not null,
    phone text not null default '',
    email text not null default '',
    address text not null default '',
    note text not null default '',
    search text not null default '',
    version integer not null default 1
);
create index customer_by_name on customer (garage, name);

create table car (
    id text primary key,
    garage text not null,
    customer text references customer (id),
    plate text not null default '',
    vin text not null default '',
    make text not null default '',
    model text not null default '',
    built text not null default '',
    distance_unit text not null default 'km' check (distance_unit in ('km', 'mi')),
    locking_key text not null default '',
    note text not null default '',
    search text not null default '',
    version integer not null default 1
);
create index car_by_plate on car (garage, plate);
create index car_by_customer on car (customer);

-- What differs on this car from its stock sheet; a new number for each change, none is ever altered.
create table car_sheet (
    car text not null references car (id),
    number integer not null,
    text text not null,
    at text not null,
    by_name text not null,
    why text not null default '',
    primary key (car, number)
);

-- Sheets of the garage's own: kept for all cars of a model, or handed over by another garage.
create table kept_sheet (
    garage text not null,
    id text not null,
    title text not null,
    text text not null,
    at text not null,
    by_name text not null,
    primary key (garage, id)
);

create table job (
    id text primary key,
    garage text not null,
    number text not null,
    car text not null references car (id),
    complaint text not null default '',
    conditions text not null default '',
    distance_in text not null default '',
    distance_out text not null default '',
    height_front_left text not null default '',
    height_front_right text not null default '',
    height_rear_left text not null default '',
    height_rear_right text not null default '',
    stage text not null,
    sheet text not null default '',
    renew text not null default '',
    side text not null default 'both',
    terms text not null default '',
    rust text not null default '',
    comeback_of text references job (id),
    opened_at text not null,
    promised_at text not null default '',
    search text not null default '',
    version integer not null default 1
);
create unique index job_by_number on job (garage, number);
create index job_by_stage on job (garage, stage);
create index job_by_car on job (car);

create table job_move (
    job text not null references job (id),
    number integer not null,
    stage text not null,
    at text not null,
    by_name text not null,
    why text not null default '',
    primary key (job, number)
);

create table approval (
    id text primary key,
    job text not null references job (id),
    who text not null,
    how text not null,
    at text not null,
    yes integer not null,
    up_to text not null default '',
    total text not null default '',
    words text not null default '',
    taken_by text not null
);
create index approval_by_job on approval (job);

create table finding (
    id text primary key,
    job text not null references job (id),
    place text not null default '',
    words text not null,
    urgency text not null check (urgency in ('stop driving', 'soon', 'watch')),
    price text not null default '',
    answer text not null default 'open' check (answer in ('open', 'agreed', 'declined')),
    answered_by text not null default '',
    at text not null,
    by_name text not null,
    version integer not null default 1
);
create index finding_by_job on finding (job);

create table part_line (
    id text primary key,
    job text not null references job (id),
    part text not null,
    name text not null,
    count integer not null default 1,
    price text not null default '',
    supplier text not null default '',
    state text not null check (state in ('to order', 'ordered', 'arrived', 'compared')),
    version integer not null default 1
);
create index part_line_by_job on part_line (job);

create table recheck (
    id text primary key,
    job text not null references job (id),
    due_on text not null,
    due_distance text not null default '',
    what text not null,
    done_at text not null default '',
    done_distance text not null default '',
    done_by text not null default '',
    seen text not null default '',
    version integer not null default 1
);
create index recheck_by_job on recheck (job);
create index recheck_by_due on recheck (done_at, due_on);

create table photo (
    id text primary key,
    job text not null references job (id),
    hash text not null,
    type text not null,
    bytes integer not null,
    words text not null default '',
    at text not null,
    by_name text not null
);
create index photo_by_job on photo (job);

create table road_test (
    id text primary key,
    job text not null references job (id),
    moment text not null check (moment in ('before', 'after')),
    conditions text not null,
    found text not null,
    at text not null,
    by_name text not null
);
create index road_test_by_job on road_test (job);

-- What was done to the car, one row an event, each with the hash of the one before.
create table event (
    job text not null references job (id),
    number integer not null,
    id text not null,
    device text not null,
    seq integer not null,
    body text not null,
    hash text not null,
    received_at text not null,
    primary key (job, number)
);
create unique index event_by_id on event (job, id);

create table link (
    token text primary key,
    job text not null references job (id),
    made_at text not null,
    expires_at text not null,
    ended_at text not null default ''
);
create index link_by_job on link (job);

create table audit (
    id text primary key,
    garage text not null,
    at text not null,
    by_name text not null,
    device text not null default '',
    job text,
    what text not null,
    words text not null default ''
);
create index audit_by_job on audit (job);

create table setting (
    garage text not null,
    name text not null,
    value text not null,
    version integer not null default 1,
    primary key (garage, name)
);

create table counter (
    garage text not null,
    name text not null,
    value integer not null,
    primary key (garage, name)
);
