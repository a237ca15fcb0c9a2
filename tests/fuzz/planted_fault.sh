#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-3.0-or-later
# planted_fault.sh TARGET: the fuzzer finds the planted faults from nothing, or the fuzzing proves nothing.
set -euo pipefail
target=$1
scratch=$(mktemp -d)
trap 'rm -rf -- "$scratch"' EXIT

# must_report WORDS ARGUMENT...: the target fails, and these words stand in what it says.
must_report() {
  local words=$1
  shift
  if "$target" "$@" -artifact_prefix="$scratch/" > "$scratch/said" 2>&1; then
    echo "not found: $words" && cat "$scratch/said" && exit 1
  fi
  grep -F "$words" "$scratch/said" || { cat "$scratch/said" && exit 1; }
}

mkdir "$scratch/corpus"
must_report 'SUMMARY: ' "$scratch/corpus" -max_total_time=120 -max_len=16
printf 'lot=!' > "$scratch/beyond"
must_report 'ERROR: AddressSanitizer: heap-buffer-overflow' "$scratch/beyond"
printf 'lot=+' > "$scratch/sum"
must_report 'runtime error: signed integer overflow' "$scratch/sum"
