-- What was said and done is never altered, only added to: not even by a fault of the program.

create function only_added_to() returns trigger language plpgsql as $$
begin
    raise exception '%: rows are only added', tg_table_name;
end
$$;

create trigger car_sheet_only_added_to before update or delete on car_sheet
    for each row execute function only_added_to();

create trigger job_move_only_added_to before update or delete on job_move
    for each row execute function only_added_to();

create trigger approval_only_added_to before update or delete on approval
    for each row execute function only_added_to();

create trigger road_test_only_added_to before update or delete on road_test
    for each row execute function only_added_to();

create trigger event_only_added_to before update or delete on event
    for each row execute function only_added_to();

create trigger audit_only_added_to before update or delete on audit
    for each row execute function only_added_to();
