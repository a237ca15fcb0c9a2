#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# run_target.sh TARGET CORPUS FINDS [OPTION...]: fuzzes for FUZZ_SECONDS (30 without it), starting from a copy of the
# corpus: nothing in the tree is written. A find is kept in FINDS.
set -euo pipefail
target=$1 corpus=$2 finds=$3
shift 3
# In memory where the system has a place for that; gone also when a find ends the target.
[[ ! -w /dev/shm ]] || export TMPDIR=/dev/shm
scratch=$(mktemp -d)
export TMPDIR=$scratch
trap 'rm -rf -- "$scratch"' EXIT
mkdir -p "$scratch/corpus" "$finds"
[[ ! -d $corpus ]] || cp -R -- "$corpus/." "$scratch/corpus"
leaks=$(dirname "${BASH_SOURCE[0]}")/../house/leaks_of_others.txt
export LSAN_OPTIONS="suppressions=\"$leaks\":print_suppressions=0" UBSAN_OPTIONS=print_stacktrace=1
export QT_LOGGING_RULES='*=false' # Qt tells of each refusal what is no news
"$target" "$scratch/corpus" -max_total_time="${FUZZ_SECONDS:-30}" -timeout=20 -rss_limit_mb=2048 \
  -print_final_stats=1 -artifact_prefix="$finds/" "$@"
