# The slow way through ./putback, which sources this file: builds the jars, then the class-data archive.
# Maven builds in target/quick, apart from what `mvn` or an editor builds, and each finished build gets a directory of its
# own in app/target/start, so that neither a start in another window nor a running server ever meets half a program.

lock=$work/lock
log=$work/build.log

build_if_needed() {
    mkdir -p "$work" 2>/dev/null || stop "cannot write to $root/app/target, and nothing has been built there yet"
    if ! [ -w "$work" ]; then
        set_release
        [ -f "$release/putback.jar" ] || stop "cannot write to $work, and nothing has been built there yet"
        return 0 # somebody else's checkout: use what is there
    fi
    take_lock
    # another start may have done it while this one waited
    set_release
    if [ -n "${PUTBACK_REBUILD:-}" ] || ! [ -f "$release/putback.jar" ] || sources_newer; then
        build_jars
        set_release
    fi
    [ -f "$archive" ] || build_archive
    printf '%s\n' "$home" >"$work/java-home"
    drop_lock
}

# --- one build at a time

take_lock() {
    waited=0
    until mkdir "$lock" 2>/dev/null; do
        [ "$waited" = 0 ] && say "another start is building; waiting for it"
        owner=
        [ -f "$lock/pid" ] && IFS= read -r owner <"$lock/pid"
        if [ -n "$owner" ] && ! alive "$owner"; then
            break_lock "$owner"
        elif [ -z "$owner" ] && [ "$waited" -ge 10 ]; then
            break_lock ""
        fi
        [ "$waited" -ge 1200 ] && stop "still waiting for a build after 20 minutes. Maybe remove $lock."
        sleep 1
        waited=$((waited + 1))
    done
    trap drop_lock EXIT
    trap 'exit 130' INT
    trap 'exit 143' TERM HUP
    echo $$ >"$lock/pid"
}

alive() {
    kill -0 "$1" 2>/dev/null || ps -p "$1" >/dev/null 2>&1
}

# Only one waiter may remove a dead owner's lock, and only if it is still that owner's.
break_lock() {
    if mkdir "$lock.breaking" 2>/dev/null; then
        now=
        [ -f "$lock/pid" ] && IFS= read -r now <"$lock/pid"
        [ "$now" = "$1" ] && rm -rf "$lock"
        rmdir "$lock.breaking"
    elif [ "$waited" -ge 30 ]; then
        rmdir "$lock.breaking" 2>/dev/null
    fi
}

drop_lock() {
    rm -rf "$lock"
    trap - EXIT INT TERM HUP
}

# --- the jars

build_jars() {
    [ -x "$home/bin/javac" ] || stop "building needs a Java development kit, but $home has no compiler. On Debian: apt install default-jdk-headless"
    if command -v mvn >/dev/null 2>&1; then
        maven=mvn
    else
        maven=$root/mvnw
    fi
    if [ -f "$release/putback.jar" ]; then
        say "building what has changed"
    else
        say "building, once; this takes a minute or two"
    fi
    touch "$work/started"
    if ! (cd "$root" && JAVA_HOME=$home "$maven" -B -q -Dquick -DskipTests -pl app -am package) </dev/null >"$log" 2>&1; then
        tail -n 20 "$log" >&2
        stop "the build failed; all of its output is in $log"
    fi
    next=$(date +%Y%m%d-%H%M%S)-$$
    mkdir "$work/$next" &&
        cp -p "$root/app/target/quick/putback.jar" "$work/$next/" &&
        cp -Rp "$root/app/target/quick/lib" "$work/$next/" &&
        printf '%s\n' "$next" >"$work/current.next" &&
        touch -r "$work/started" "$work/current.next" ||
        stop "cannot write to $work"
    set_release
    before=${release##*/}
    release=$work/$next
    archive=$release/$java_key.jsa
    build_archive
    mv -f "$work/current.next" "$work/current" || stop "cannot write to $work"
    # A server may still run from the build before this one; older ones go.
    for old in "$work"/[0-9]*-[0-9]*-[0-9]*; do
        case ${old##*/} in
            "$next" | "$before") ;;
            *) rm -rf "$old" ;;
        esac
    done
}

# --- the class-data archive: what the usual commands load, parsed and verified beforehand

build_archive() {
    rm -f "$work/loaded.all"
    train --version
    train --help
    sheets=$root/store/src/main/resources/putback/sheets
    train plan front-strut --renew complete-strut
    train plan front-strut --renew complete-strut --json
    train plan "$sheets/front-strut.yaml" --renew strut --side left
    train plan "$sheets/twist-beam.yaml" --renew spring,damper
    train plan "$sheets/front-brake.yaml" --renew pads --why 3
    train plan "$sheets/front-brake.yaml" --renew disc --svg "$work/ladder.svg"
    train plan demo-van --renew spring,damper,pads
    train price demo-van --renew spring,damper --rust 2 --tax 20 --ceiling 500
    train alongside front-brake --renew pads
    rm -f "$work/ladder.svg"
    awk '!seen[$0]++' "$work/loaded.all" | sed 's/^[0-9]* //' >"$work/classes"
    rm -f "$work/loaded.all"
    if "$java" -Xshare:dump -Xmx2g -XX:+UseG1GC -XX:SharedClassListFile="$work/classes" -XX:SharedArchiveFile="$archive.$$" \
        -Xlog:disable -Xlog:all=off -cp "$release/putback.jar" >>"$log" 2>&1 && [ -f "$archive.$$" ]; then
        mv -f "$archive.$$" "$archive"
    else
        rm -f "$archive.$$"
        : >"$archive" # a Java that cannot do it: starts are slower, and are not held up by trying again
    fi
}

train() {
    "$java" -Xmx2g -XX:+UseG1GC -XX:TieredStopAtLevel=1 -Xlog:disable -Xlog:all=off -XX:DumpLoadedClassList="$work/loaded" \
        -cp "$release/putback.jar" putback.app.Main "$@" >/dev/null 2>&1 </dev/null
    # Each run numbers its classes; without the numbers the lists can stand one after the other. A lambda is listed as
    # often as the run makes it, and is wanted as often: each line says in front which one of its like it is.
    [ -f "$work/loaded" ] && sed -e '/^#/d' -e '/ source: /d' -e 's/ id: [0-9]*$//' "$work/loaded" |
        awk '{ print ++count[$0], $0 }' >>"$work/loaded.all"
    rm -f "$work/loaded"
}
