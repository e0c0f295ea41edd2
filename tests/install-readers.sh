#!/bin/sh
# The tests read built pages with a real browser and PDFs with independent readers. This installs what is
# missing from Debian's packages, or says what to install where that can't be done.
set -eu

missing=''
command -v chromium >/dev/null || missing="$missing chromium"
command -v pdftotext >/dev/null || missing="$missing poppler-utils"
command -v qpdf >/dev/null || missing="$missing qpdf"
[ -z "$missing" ] && exit 0

if ! command -v apt-get >/dev/null; then
  echo "The tests need these programs, please install them:$missing" >&2
  exit 1
fi

root=''
[ "$(id -u)" -eq 0 ] || root='sudo'
$root apt-get update -qq
# shellcheck disable=SC2086  # one word a package
DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq --no-install-recommends $missing
