package putback.app.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import putback.ledger.Event;
import putback.store.books.Arrival;
import putback.store.books.Car;
import putback.store.books.Cars;
import putback.store.books.Events;
import putback.store.books.Heights;
import putback.store.books.Job;
import putback.store.books.Jobs;
import putback.store.books.Saved;
import putback.store.books.Scope;

/** Whose an event is where people sign in. */
class CarsideBelievedTest {
    private static final String EVENT = "{\"id\":\"tab-1\",\"at\":\"2026-03-02T09:14:05Z\",\"by\":\"%s\","
            + "\"device\":\"tab\",\"seq\":1,\"do\":\"undo\",\"joint\":\"left.wheel-nuts\"}";

    private Lan lan;
    private Job job;

    @BeforeEach
    void start() throws Exception {
        lan = new Lan();
        Car car = new Car("", "", "WH 12 K", "", "Tamsel", "Dory van", "2014", "km", "", "", 0);
        job = lan.books.write(change -> {
            String id = ((Saved.Done<Car>) new Cars(lan.books).save(change, car))
                    .value()
                    .id();
            Arrival arrival = new Arrival("bangs", "", "", "", Heights.NONE, "");
            Job opened = new Jobs(lan.books).open(change, id, arrival, "", Lan.OWNER);
            Scope scope = new Scope("demo-van", "damper", "both", "", "");
            return ((Saved.Done<Job>) new Jobs(lan.books).save(change, opened.with(scope))).value();
        });
    }

    @AfterEach
    void stop() {
        lan.close();
    }

    private HttpResponse<String> send(String cookie, String by) throws Exception {
        return lan.send(lan.to("/job/" + job.id() + "/events", cookie)
                .header("Content-Type", "application/x-ndjson")
                .header("Origin", lan.server.address())
                .POST(BodyPublishers.ofString(EVENT.formatted(by)))
                .build());
    }

    @Test
    void aNameInAnEvent_isNotBelieved_butThatOfWhoeverIsSignedIn() throws Exception {
        assertThat(send(lan.signedIn(Lan.MECHANIC), "Teo").body()).contains("\"kept\":[\"tab-1\"]");
        assertThat(new Events(lan.books).all(job.id()))
                .extracting(Event::by, Event::reason)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(Lan.MECHANIC, "written down under the name Teo"));
    }

    @Test
    void whatIsSentAgainBySomebodyElse_staysAsItIs_andIsNotRefused() throws Exception {
        send(lan.signedIn(Lan.MECHANIC), Lan.MECHANIC);
        assertThat(send(lan.signedIn(Lan.OWNER), Lan.MECHANIC).body())
                .contains("\"kept\":[\"tab-1\"]", "\"refused\":[]");
        assertThat(new Events(lan.books).all(job.id())).extracting(Event::by).containsExactly(Lan.MECHANIC);
    }

    @Test
    void thePage_knowsWhoIsSignedIn() throws Exception {
        assertThat(lan.get("/job/" + job.id() + "/carside", lan.signedIn(Lan.MECHANIC))
                        .body())
                .contains("data-me=\"" + Lan.MECHANIC + "\"");
    }
}
