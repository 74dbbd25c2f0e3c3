#!/bin/sh
# Starts Drawwell. Java's archive of loaded classes is written when the first start ends, into
# the person's own cache; with it later starts take a third of the time.
here=$(dirname "$(dirname "$(readlink -f "$0")")")/lib/drawwell
cache=${XDG_CACHE_HOME:-$HOME/.cache}/drawwell
archive=$cache/classes-@BUILD@.jsa
case ${LC_ALL:-${LC_CTYPE:-$LANG}} in
  *[Uu][Tt][Ff]*8) ;;
  *) export LC_ALL=C.UTF-8 ;; # else a folder with an umlaut could not be named
esac

start() {
  how=$1
  shift
  "$here/runtime/bin/java" "$how" -Xlog:cds=off -Xlog:cds+dynamic=off @QUICK@ \
    "-Djna.library.path=$here" @NATIVES@ -cp "@CLASSPATH@" @MAIN@ "$@"
}

if [ -f "$archive" ] || ! mkdir -p "$cache" 2>/dev/null; then
  start "-XX:SharedArchiveFile=$archive" "$@"
  exit
fi
rm -f "$cache"/classes-*.jsa
start "-XX:ArchiveClassesAtExit=$archive.$$" "$@"
ended=$?
if [ $ended = 0 ]; then mv -f "$archive.$$" "$archive" 2>/dev/null; else rm -f "$archive.$$"; fi
exit $ended
