# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
# shellcheck shell=bash
# Shared by app/run, tests/run and .ci/run: install what is missing, configure and build a preset, quietly.

house=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)

say() { printf '%s\n' "$*" >&2; }

# A job each processor, but no more than memory carries (about 1.2 GB a compiler).
jobs_that_fit() {
  local processors kilobytes by_memory
  processors=$(getconf _NPROCESSORS_ONLN 2>/dev/null || echo 2)
  kilobytes=$(awk '/^MemAvailable:/ { print $2 }' /proc/meminfo 2>/dev/null)
  by_memory=$((${kilobytes:-4000000} / 1200000))
  ((by_memory < 1)) && by_memory=1
  echo $((processors < by_memory ? processors : by_memory))
}

# The lines of the named groups in app/packages.debian.
packages_of() {
  local wanted=" $* " group='' line
  while IFS= read -r line || [ -n "$line" ]; do
    line=${line%%#*}
    line=${line//[[:space:]]/}
    case $line in
      '') ;;
      '['*']') group=${line:1:-1} ;;
      *) [[ $wanted == *" $group "* ]] && printf '%s\n' "$line" ;;
    esac
  done <"$house/app/packages.debian"
  return 0
}

is_installed() { [[ $(dpkg-query -W -f='${db:Status-Abbrev}' "$1" 2>/dev/null) == ?i* ]]; }
can_be_installed() { LC_ALL=C apt-cache policy "$1" 2>/dev/null | grep -q '^  Candidate: [^(]'; }

missing_packages() {
  local line name
  while IFS= read -r line; do
    for name in ${line//|/ }; do
      is_installed "$name" && continue 2
    done
    printf '%s\n' "$line"
  done < <(packages_of "$@")
}

# install_missing GROUP…: asks the package manager only when something is missing.
install_missing() {
  [ -n "${TAREBOWL_SKIP_INSTALL:-}" ] && return 0
  if ! command -v dpkg-query >/dev/null || ! command -v apt-get >/dev/null; then
    say "No apt here: install the counterparts of these packages, then run this again with TAREBOWL_SKIP_INSTALL=1:"
    packages_of "$@" | sed 's/^/  /; s/|/ or /g' >&2
    return 1
  fi
  local missing as_root=() choice=() line name
  missing=$(missing_packages "$@")
  [ -z "$missing" ] && return 0
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null || { say "Missing, and no sudo here to install it: ${missing//$'\n'/ }"; return 1; }
    as_root=(sudo)
  fi
  say "Installing: ${missing//$'\n'/ }"
  logged apt-update "${as_root[@]}" apt-get update -q || return 1
  while IFS= read -r line; do
    for name in ${line//|/ }; do
      can_be_installed "$name" && break
    done
    choice+=("$name")
  done <<<"$missing"
  logged apt-install "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -q -y --no-install-recommends "${choice[@]}"
}

# logged NAME COMMAND…: quiet unless it fails; the whole output stays in build/logs/NAME.log.
logged() {
  local log="$house/build/logs/$1.log"
  shift
  mkdir -p "$house/build/logs"
  LC_ALL=C.UTF-8 "$@" >"$log" 2>&1 </dev/null && return 0
  local status=$?
  tail -n "${TAREBOWL_LOG_LINES:-60}" "$log" >&2
  say "Failed ($status): $* — the whole output is in $log"
  return "$status"
}

# build_preset PRESET [TARGET…]
build_preset() {
  local preset=$1
  shift
  if command -v ccache >/dev/null; then
    export CMAKE_CXX_COMPILER_LAUNCHER=ccache CCACHE_BASEDIR="$house" CCACHE_NOHASHDIR=1 CCACHE_SLOPPINESS=pch_defines,time_macros
  fi
  local targets=()
  [ $# -gt 0 ] && targets=(--target "$@")
  say "Building ($preset); the first time takes minutes, build/logs/build-$preset.log shows how far it is …"
  (cd "$house" && logged "configure-$preset" cmake --preset "$preset") || return 1
  logged "build-$preset" cmake --build "$house/build/$preset" --parallel "$(jobs_that_fit)" "${targets[@]}"
}
