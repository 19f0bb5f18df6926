#!/bin/sh
# Tests the launcher in a copy of the checkout, in a folder with a space in its name. Needs Java, Maven and a filled
# Maven repository; takes some ten seconds. Prints a line a test; ends with 1 if one fails.
set -u

checkout=$(CDPATH='' cd -P -- "$(dirname -- "$0")/../../../.." && pwd)
work=$(mktemp -d)
trap 'chmod -R u+w "$work"; rm -rf "$work"' EXIT
chmod 755 "$work"
copy="$work/a copy"
laminate="$copy/laminate-cli/laminate"
target="$copy/laminate-cli/target"
failures=0

ok() { # $1: what is tested, then a command that succeeds
    name=$1
    shift
    if "$@"; then
        echo "ok      $name"
    else
        echo "FAILED  $name"
        sed 's/^/        out: /' "$work/out"
        sed 's/^/        err: /' "$work/err"
        failures=$((failures + 1))
    fi
}

run() { # leaves out, err and the exit code
    "$@" >"$work/out" 2>"$work/err"
    code=$?
}

printed_only_its_version() {
    [ "$code" -eq 0 ] && [ "$(cat "$work/out")" = "laminate $version" ] && [ ! -s "$work/err" ]
}

built_and_printed_its_version() {
    [ "$code" -eq 0 ] && [ "$(cat "$work/out")" = "laminate $version" ] && said 'building'
}

said() {
    grep -q -- "$1" "$work/err"
}

refused_saying() {
    [ "$code" -eq 127 ] && [ ! -s "$work/out" ] && said "$1"
}

is_version_of_the_pom() {
    [ "$(grep -c . "$work/out")" -eq 1 ] && grep -q "<version>$version</version>" "$copy/pom.xml"
}

# ---- a fresh checkout ------------------------------------------------------------------------------------------------

mkdir "$copy"
(cd "$checkout" && tar -cf - pom.xml ./*/pom.xml ./*/src/main laminate-cli/laminate) | tar -xf - -C "$copy"

run env LAMINATE_NO_BUILD=1 "$laminate" --version
ok 'forbidden to build, it says that nothing is built' refused_saying 'not built'

# A path that holds the tools of the launcher, and neither Java nor Maven.
mkdir "$work/tools"
for tool in sh find sed mkdir rm mv touch cat cut cksum ln sleep readlink env dirname; do
    ln -s "$(command -v $tool)" "$work/tools/$tool"
done
run env -u JAVA_HOME PATH="$work/tools" "$laminate" --version
ok 'without Java it says so' refused_saying 'Java is missing'

java_home=$(java -XshowSettings:properties -version 2>&1 | sed -n 's/^ *java\.home = //p')
[ -z "${JAVA_HOME:-}" ] || java_home=$JAVA_HOME
run env JAVA_HOME="$java_home" PATH="$work/tools" "$laminate" --version
ok 'without Maven it says so' refused_saying 'Maven is missing'

mkdir -p "$work/old java/bin"
cat >"$work/old java/bin/java" <<'END'
#!/bin/sh
echo "    java.home = /nowhere" >&2
echo "    java.specification.version = 1.8" >&2
END
chmod +x "$work/old java/bin/java"
run env JAVA_HOME="$work/old java" "$laminate" --version
ok 'an old Java is refused by its version' refused_saying 'is version 8'

run "$laminate" --version
version=$(sed -n 's/^laminate //p' "$work/out")
ok 'the first call builds, and prints nothing else to standard output' built_and_printed_its_version
ok 'the version is that of the pom' is_version_of_the_pom
ok 'it leaves an archive of classes for this Java' test -s "$(echo "$target"/jdk-*/)classes.jsa"
ok 'it leaves no lock' test ! -e "$target/build.lock"

# ---- once built ------------------------------------------------------------------------------------------------------

run "$laminate" --version
ok 'the second call builds nothing' printed_only_its_version

run "$laminate" --nonsense
ok 'the exit code is that of the program' test "$code" -eq 2

mkdir "$work/bin"
ln -s "$laminate" "$work/bin/laminate-link"
ln -s laminate-link "$work/bin/laminate"
run "$work/bin/laminate" --version
ok 'through a symlink to a symlink' printed_only_its_version
run env PATH="$work/bin:$PATH" laminate --version
ok 'through a symlink on the path' printed_only_its_version
cd "$copy/laminate-cli/src" || exit 1
run ../laminate --version
ok 'by a relative path' printed_only_its_version
cd "$copy/laminate-cli" || exit 1
run sh laminate --version
ok 'by its bare name' printed_only_its_version
cd "$work" || exit 1

# A Java that tells where it runs and what it is given.
mkdir -p "$work/telling java/bin"
cat >"$work/telling java/bin/java" <<'END'
#!/bin/sh
case $* in
    *showSettings*)
        echo "    java.home = /nowhere" >&2
        echo "    java.specification.version = 21" >&2
        ;;
    *)
        pwd
        cat
        for argument in "$@"; do last=$argument; done
        echo "$last"
        ;;
esac
END
chmod +x "$work/telling java/bin/java"
echo 'standard input' >"$work/in"
run env LAMINATE_NO_BUILD=1 JAVA_HOME="$work/telling java" "$laminate" 'one argument' <"$work/in"
printf '%s\nstandard input\none argument\n' "$(pwd -P)" >"$work/expected"
ok 'working directory, standard input and arguments reach the program whole' cmp -s "$work/expected" "$work/out"

# ---- changed sources -------------------------------------------------------------------------------------------------

source="$copy/laminate-cli/src/main/java/laminate/cli"
touch "$source/Main.java"
run "$laminate" --version
ok 'a changed source is built' built_and_printed_its_version

echo 'package laminate.cli; class Passing {}' >"$source/Passing.java"
run "$laminate" --version
ok 'a new source is built' built_and_printed_its_version
rm "$source/Passing.java"
run "$laminate" --version
ok 'a removed source is noticed' built_and_printed_its_version
run "$laminate" --version
ok 'and then all is quiet' printed_only_its_version

echo 'package laminate.cli; class Broken {' >"$source/Broken.java"
run "$laminate" --version
ok 'a failed build shows why, on standard error' refused_saying 'Broken.java'
ok 'and leaves no lock' test ! -e "$target/build.lock"
rm "$source/Broken.java"

touch "$source/Main.java"
"$laminate" --version >"$work/out1" 2>"$work/err1" &
first=$!
"$laminate" --version >"$work/out2" 2>"$work/err2" &
second=$!
wait "$first"
code1=$?
wait "$second"
code2=$?
cat "$work/out1" "$work/out2" >"$work/out"
cat "$work/err1" "$work/err2" >"$work/err"
both_printed_and_one_built() {
    [ "$code1$code2" = 00 ] && [ "$(grep -c "^laminate $version\$" "$work/out")" -eq 2 ] &&
        [ "$(grep -c building "$work/err")" -eq 1 ]
}
ok 'of two at once, one builds and both work' both_printed_and_one_built

# ---- a lock in the way -----------------------------------------------------------------------------------------------

sh -c 'exit 0' &
dead=$!
wait "$dead"
mkdir "$target/build.lock"
echo "$dead" >"$target/build.lock/pid"
touch "$source/Main.java"
run "$laminate" --version
ok 'the lock of a build that died is removed' built_and_printed_its_version

mkdir "$target/build.lock"
echo "$$" >"$target/build.lock/pid"
touch "$source/Main.java"
run env LAMINATE_WAIT=1 "$laminate" --version
ok 'a build that goes on too long is not waited for' refused_saying 'another build does not end'
ok 'and its lock is left alone' test -d "$target/build.lock"
rm -r "$target/build.lock"
run env LAMINATE_NO_BUILD=1 "$laminate" --version
ok 'forbidden to build, it runs what there is' test "$code" -eq 0
run "$laminate" --version

# ---- a checkout that cannot be written -------------------------------------------------------------------------------

# The superuser may write anywhere, so the test is run as nobody.
as_user() {
    if [ "$(id -u)" -eq 0 ]; then
        setpriv --reuid=65534 --regid=65534 --clear-groups "$@"
    else
        "$@"
    fi
}
if [ "$(id -u)" -eq 0 ] && ! command -v setpriv >/dev/null; then
    echo 'SKIPPED read-only checkout: run as the superuser, and setpriv is missing'
else
    chmod -R a-w,a+rX "$copy"
    run as_user "$laminate" --version
    ok 'from a read-only checkout' printed_only_its_version
    chmod u+w "$source/Main.java"
    touch "$source/Main.java"
    chmod a-w "$source/Main.java"
    run as_user "$laminate" --version
    ok 'from a read-only checkout with newer sources, with a notice' said 'cannot be written'
    ok 'and it works' test "$code" -eq 0
fi

[ "$failures" -eq 0 ] && echo "Launcher: all tests passed." || echo "Launcher: $failures failed."
[ "$failures" -eq 0 ]
