-- What the owner was asked: each estimate as it was put to him, so that a yes can be read against it years later.

create table estimate (
    id text primary key,
    job text not null references job (id),
    number integer not null,
    at text not null,
    by_name text not null,
    renewed text not null,
    likely text not null,
    four_in_five text not null,
    asked text not null,
    currency text not null default '',
    lacking text not null default ''
);
create unique index estimate_by_number on estimate (job, number);

create table estimate_line (
    estimate text not null references estimate (id),
    number integer not null,
    text text not null,
    quantity text not null,
    unit text not null default '',
    amount text not null,
    primary key (estimate, number)
);

alter table approval add column estimate text references estimate (id);

-- The customer's own words to a finding; who wrote them down is in answered_by.
alter table finding add column said text not null default '';

-- Who gave a part's price, empty while it is an example of the sheet; who saw that it is the right one by number and look.
alter table part_line add column priced_by text not null default '';
alter table part_line add column looked_by text not null default '';

-- What the garage paid for a part of a model, or of one car where no model is known; offered again at the next job.
create table part_price (
    garage text not null,
    model text not null,
    part text not null,
    name text not null,
    count integer not null default 1,
    price text not null,
    at text not null,
    by_name text not null,
    primary key (garage, model, part)
);

create trigger estimate_no_update before update on estimate
begin
    select raise(abort, 'estimate: rows are only added');
end;

create trigger estimate_no_delete before delete on estimate
begin
    select raise(abort, 'estimate: rows are only added');
end;

create trigger estimate_line_no_update before update on estimate_line
begin
    select raise(abort, 'estimate_line: rows are only added');
end;

create trigger estimate_line_no_delete before delete on estimate_line
begin
    select raise(abort, 'estimate_line: rows are only added');
end;
