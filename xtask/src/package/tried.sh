# Runs in a Debian root of its own; see tried.rs.
set -eu
cd /tmp/tried
cp resolv.conf /etc/resolv.conf
export DEBIAN_FRONTEND=noninteractive HOME=/root DISPLAY=:77
unset XDG_DATA_HOME XDG_CACHE_HOME WAYLAND_DISPLAY || true

apt-get update -qq
apt-get install -y -qq --no-install-recommends ./drawwell.deb >installed.log 2>&1 || { cat installed.log; exit 1; }
desktop-file-validate /usr/share/applications/drawwell*.desktop
Xvfb :77 -screen 0 1280x900x24 -fbdir /tmp/tried >/dev/null 2>&1 &
screen=$!
sleep 2

# Waits up to a minute for what is asked.
until_so() { for _ in $(seq 120); do if "$@"; then return 0; fi; sleep 0.5; done; echo "never: $*"; return 1; }

drawwell --measure 2>/dev/null # the first start, which writes the archive of classes
drawwell --measure 2>/dev/null # a later one
test "$(ls "$HOME"/.cache/drawwell/classes-*.jsa | wc -l)" = 1

drawwell >started.log 2>&1 &
until_so test -f "$HOME/.local/share/drawwell/record.drawwell"
sleep 3
cp Xvfb_screen0 now.xwd
pkill -f MainKt
wait $! || true

test "$(gio info -a standard::content-type shared.drawwell-family | grep -c application/x-drawwell-family)" = 1
gio open shared.drawwell-family >opened.log 2>&1
until_so pgrep -f "MainKt .*shared.drawwell-family --caseload" >/dev/null
until_so test -d "$HOME/.local/share/drawwell-caseload"
sleep 3
cp Xvfb_screen0 family.xwd
pkill -f MainKt
kill $screen

dpkg --purge drawwell >/dev/null
for gone in /usr/bin/drawwell /usr/lib/drawwell /usr/share/doc/drawwell /usr/share/applications/drawwell.desktop; do
  if [ -e "$gone" ]; then echo "still there: $gone"; exit 1; fi
done
# What is the person's own stays.
test -f "$HOME/.local/share/drawwell/record.drawwell"
