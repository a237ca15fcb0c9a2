# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# shellcheck disable=SC2154 # root and scratch are set by the caller, or by a function here
# Shared by tests/run and demo/run; sourced, never run. The caller has set `root` to the repository's folder.

packages_file=$root/tests/packages.txt

say() { printf '%s\n' "$*"; }
die() { printf '%s\n' "$*" >&2; exit 1; }

# packages_of GROUP...: the packages of those groups of tests/packages.txt, one a line.
packages_of() {
  local line group='' wanted
  while IFS= read -r line || [[ -n $line ]]; do
    case $line in
      '' | '#'*) ;;
      '['*']') group=${line:1:-1} ;;
      *) for wanted in "$@"; do [[ $group == "$wanted" ]] && printf '%s\n' "$line"; done ;;
    esac
  done < "$packages_file"
  return 0
}

is_installed() {
  [[ $(dpkg-query -W -f '${db:Status-Status}' "$1" 2> /dev/null) == installed ]]
}

# With nobody there to type a password, sudo is to fail instead of waiting.
if [[ -t 0 ]]; then sudo=(sudo); else sudo=(sudo -n); fi

# as_root COMMAND...: the command itself for root, through sudo for anybody else.
as_root() {
  if ((EUID == 0)); then "$@"; else "${sudo[@]}" "$@"; fi
}

apt() {
  as_root env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 \
    apt-get -q -o Dpkg::Use-Pty=0 -o DPkg::Lock::Timeout=300 -o Acquire::Retries=3 "$@" < /dev/null
}

# install_missing GROUP...: says what is missing of those groups and installs that, and only that.
install_missing() {
  command -v apt-get > /dev/null && command -v dpkg-query > /dev/null ||
    die "This script installs from the packages of Debian 12, and here is no apt-get. Install what stands in" \
      "$packages_file by hand, then build with: cmake -B build && cmake --build build"
  local package missing=()
  for package in $(packages_of "$@"); do
    is_installed "$package" || missing+=("$package")
  done
  if ((${#missing[@]} == 0)); then
    say "Packages: everything needed is installed."
    return
  fi
  say "Packages to install from the system's own sources (${#missing[@]}, and what they depend on):"
  printf '  %s\n' "${missing[@]}"
  local by_hand="As root, run: apt-get install --no-install-recommends ${missing[*]}"
  if ((EUID != 0)); then
    command -v sudo > /dev/null || die "Installing needs root, and sudo is not there. $by_hand"
    as_root true || die "Installing needs root, and sudo does not let this person. $by_hand"
  fi
  ((EUID == 0)) || say "Only this step runs as root, through sudo."
  apt update || say "The package lists could not all be refreshed; going on with the lists that are there." >&2
  apt install -y --no-install-recommends "${missing[@]}" ||
    die "Installing failed; the lines above say why. Nothing was built."
  hash -r
}

# leave_root SCRIPT ARGUMENT...: started as `sudo SCRIPT` in a folder that belongs to the person behind sudo,
# go on as that person once the packages are there, so that nothing in the folder becomes root's.
leave_root() {
  ((EUID == 0)) || return 0
  local uid=${SUDO_UID:-0}
  ((uid != 0)) && [[ $(stat -c %u "$root") == "$uid" ]] || return 0
  local home
  home=$(getent passwd "$uid" | cut -d: -f6)
  say "Going on as $SUDO_USER: the packages are there, and nothing else needs root."
  exec setpriv --reuid "$uid" --regid "$SUDO_GID" --init-groups env HOME="$home" USER="$SUDO_USER" "$@"
}

# clean_environment: the same surroundings on every machine; also on one that has no locale and no session.
clean_environment() {
  local name
  for name in "${!QT_@}" LANGUAGE; do unset "$name"; done
  export LC_ALL=C.UTF-8
  scratch=$(mktemp -d)
  trap 'rm -rf -- "$scratch"' EXIT
  mkdir -m 700 "$scratch/runtime"
  export XDG_RUNTIME_DIR=$scratch/runtime
}

# is_configured FOLDER: it holds a configuration of this tree, not one that came along with a moved copy.
is_configured() {
  [[ -f $1/CMakeCache.txt ]] && grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$1/CMakeCache.txt"
}

# configure FOLDER ARGUMENT...: configures into FOLDER, afresh if what is there is not this tree's.
configure() {
  local folder=$1 fresh=()
  shift
  is_configured "$folder" || fresh=(--fresh)
  (cd "$root" && cmake "${fresh[@]}" -B "$folder" "$@")
}

# build FOLDER [TARGET...]: with all cores.
build() {
  local folder=$1
  shift
  cmake --build "$folder" --parallel "$(nproc)" ${1:+--target "$@"}
}
