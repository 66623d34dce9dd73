-- What was said and done is never altered, only added to: not even by a fault of the program.

create trigger car_sheet_no_update before update on car_sheet
begin
    select raise(abort, 'car_sheet: rows are only added');
end;

create trigger car_sheet_no_delete before delete on car_sheet
begin
    select raise(abort, 'car_sheet: rows are only added');
end;

create trigger job_move_no_update before update on job_move
begin
    select raise(abort, 'job_move: rows are only added');
end;

create trigger job_move_no_delete before delete on job_move
begin
    select raise(abort, 'job_move: rows are only added');
end;

create trigger approval_no_update before update on approval
begin
    select raise(abort, 'approval: rows are only added');
end;

create trigger approval_no_delete before delete on approval
begin
    select raise(abort, 'approval: rows are only added');
end;

create trigger road_test_no_update before update on road_test
begin
    select raise(abort, 'road_test: rows are only added');
end;

create trigger road_test_no_delete before delete on road_test
begin
    select raise(abort, 'road_test: rows are only added');
end;

create trigger event_no_update before update on event
begin
    select raise(abort, 'event: rows are only added');
end;

create trigger event_no_delete before delete on event
begin
    select raise(abort, 'event: rows are only added');
end;

create trigger audit_no_update before update on audit
begin
    select raise(abort, 'audit: rows are only added');
end;

create trigger audit_no_delete before delete on audit
begin
    select raise(abort, 'audit: rows are only added');
end;
