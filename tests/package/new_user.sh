# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# What a new user tries with the installed package, a word a part; fresh_machine runs it in a bare root, in the person's
# home, where only the package and what it asks for is there.
set -euo pipefail
cd
log=.local/share/strandbench/bench.sqlite

# without_window: each command that needs nothing but input, and the exit status of one that is refused.
without_window() {
  strandbench --version
  strandbench mix --puddle-mm 101.6
  strandbench air --temperature-c 18.5 --humidity-percent 52 --panel-c 17
  cat > hole.json << 'END'
{"job":"4421","panel":"skirt panel, right rear","substrate":"smc",
 "damage":{"kind":"hole","length_mm":60,"width_mm":40,"depth_mm":3.5,"panel_thickness_mm":3.5,"bevel_ratio":4},
 "rear_access":true,"surface":"bare","zone":"cosmetic","moisture":"dry","air_c":18.5,"panel_c":17,"humidity_percent":52}
END
  strandbench plan hole.json > plan.json
  grep -E '"(verdict|filler_class|filler_total_g|ready_for_primer_s)"' plan.json
  grep -q '"verdict": "fill"' plan.json
  # The cure case of the plan's first lift is a case that `cure` takes.
  sed -n '/"cure_case": {/,/^            },\{0,1\}$/p' plan.json |
    sed 's/.*"cure_case": {/{/; s/^            },\{0,1\}$/}/' | sed '/^}$/q' > case.json
  strandbench cure case.json | grep -E '"(gel_s|sand_s|peak_c)"'
  local status=0
  strandbench mix --puddle-mm 4 || status=$?
  [[ $status == 2 ]]
}

# bench PLATFORM WAIT: the bench opens its window, and is ended once it has written its log and WAIT is over.
bench() {
  QT_QPA_PLATFORM=$1 strandbench &
  local program=$! tries=0
  until [[ -s $log ]]; do
    kill -0 "$program" # it is still running
    ((++tries < 600))
    sleep 0.1
  done
  eval "$2"
  kill -0 "$program"
  kill -TERM "$program"
  wait "$program" || true
}

# window: no display, so off-screen; then the log that it made is looked at.
window() {
  bench offscreen 'sleep 3'
  strandbench verify --log "$log"
  strandbench backup --log "$log" --to copy.sqlite
  strandbench verify --log copy.sqlite
  strandbench report --log "$log" --day today --json
  strandbench report --log "$log" --day today --pdf day.pdf
  head -c 5 day.pdf | grep -q '%PDF-'
}

# picture: under an X server without a glass, whole screen.
picture() {
  mkdir -p frame
  Xvfb :77 -screen 0 1280x800x24 -nolisten tcp -fbdir frame &
  local server=$! tries=0
  until [[ -e frame/Xvfb_screen0 ]]; do ((++tries < 100)) && sleep 0.1; done
  export DISPLAY=:77
  bench xcb 'sleep 8 && xwd -root -silent > home.xwd'
  kill "$server"
  xwdtopnm home.xwd > home.ppm
  pnmtopng home.ppm > home.png
  # A screen of one colour is no screen.
  (($(ppmhist -noheader home.ppm | wc -l) > 50))
}

# desktop: what a desktop, a manual reader and systemd find.
desktop() {
  desktop-file-validate /usr/share/applications/org.strandbench.Strandbench.desktop
  mkdir -p -m 700 runtime
  XDG_RUNTIME_DIR=$PWD/runtime systemd-analyze verify --user --man=no \
    /usr/lib/systemd/user/strandbench-kiosk.service
}

remember() { find .local -type f -exec sha256sum {} + | sort > before.txt && cat before.txt && [[ -s before.txt ]]; }

# left: the package is gone, and each file that the bench wrote is as it was.
left() {
  if command -v strandbench; then return 1; fi
  find .local -type f -exec sha256sum {} + | sort | diff before.txt -
}

"$1"
