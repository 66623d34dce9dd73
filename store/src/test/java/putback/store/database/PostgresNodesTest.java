package putback.store.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Two nodes on one real server. */
@Tag("long")
class PostgresNodesTest {
    private static int write(Database database, String name) {
        return database.write(change -> {
            change.tell("setting:" + name);
            return change.handle().execute("insert into setting (garage, name, value) values ('g', ?, 'yes')", name);
        });
    }

    private static int count(Database database) {
        return database.read(handle -> handle.createQuery("select count(*) from setting")
                .mapTo(Integer.class)
                .one());
    }

    @Test
    void whatOneNodeChanges_theOtherHears_andReads() throws Exception {
        String where = PostgresServer.freshDatabase();
        try (Database one = Databases.open(where);
                Database other = Databases.open(where);
                Heard heard = new Heard(other, "setting:rates")) {
            write(one, "rates");
            assertThat(heard.inTime()).isTrue();
            assertThat(heard.all()).containsExactly("setting:rates");
            assertThat(count(other)).isEqualTo(1);
        }
    }

    @Test
    void whatIsRolledBack_nobodyHears() throws Exception {
        String where = PostgresServer.freshDatabase();
        try (Database one = Databases.open(where);
                Database other = Databases.open(where);
                Heard heard = new Heard(other, "setting:second")) {
            assertThatThrownBy(() -> one.write(change -> {
                        change.tell("setting:first");
                        throw new IllegalArgumentException("stop");
                    }))
                    .isInstanceOf(IllegalArgumentException.class);
            write(one, "second");
            assertThat(heard.inTime()).isTrue();
            assertThat(heard.all()).containsExactly("setting:second");
        }
    }

    @Test
    void aServerThatIsRestarted_isToldOf_andThenWorksAgain() throws Exception {
        PostgresServer server = PostgresServer.own();
        try (Database database = Databases.open(server.newDatabase())) {
            write(database, "before");
            server.stop();
            assertThatThrownBy(() -> write(database, "meanwhile"))
                    .isInstanceOf(StoreFailure.class)
                    .hasMessageContaining("the server does not answer")
                    .hasMessageContaining("is it running");
            try (Heard heard = new Heard(database, Changes.ALL)) {
                server.start();
                assertThat(heard.inTime())
                        .as("whoever listens is told to look again")
                        .isTrue();
            }
            write(database, "after");
            assertThat(count(database)).isEqualTo(2);
        } finally {
            server.stop();
        }
    }

    @Test
    void aDatabaseOrNameThatIsNotThere_isTold() {
        String where = PostgresServer.freshDatabase();
        String none = where.replaceFirst("/books[0-9]+", "/nowhere");
        assertThatThrownBy(() -> Databases.open(none))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("has no such database");
        assertThatThrownBy(() -> Databases.open(where.replace("user=putback", "user=nobody-here")))
                .isInstanceOf(StoreFailure.class)
                .hasMessageContaining("refuses this name");
        assertThatThrownBy(() -> Databases.look(where)).hasMessageContaining("these are not Putback's books");
    }
}
