#!/bin/sh
# Packs the bundle as a Debian package: dist/welds_VERSION_ARCH.deb, or into FOLDER. Makes the bundle first unless told where it is.
# deb.sh [FOLDER [BUNDLE]]
set -eu

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd -P)
dist=${1:-$root/dist}
SOURCE_DATE_EPOCH=${SOURCE_DATE_EPOCH:-$(git -C "$root" log -1 --format=%ct 2>/dev/null || echo 1577836800)}
export SOURCE_DATE_EPOCH

command -v dpkg-deb >/dev/null || { echo "welds: dpkg-deb is needed: run this on Debian or a relative" >&2; exit 2; }
bundle=${2:-$(sh "$root/packaging/bundle.sh" "$dist")}
version=$(sed -n 's/^__version__ = "\(.*\)"$/\1/p' "$root/welds/__init__.py")
arch=$(dpkg --print-architecture)
tree=$(mktemp -d)
trap 'rm -rf -- "$tree"' EXIT
trap 'exit 130' INT
trap 'exit 143' TERM HUP

umask 022
mkdir -p "$dist" "$tree/DEBIAN" "$tree/usr/bin" "$tree/usr/lib" "$tree/usr/share/doc/welds"
cp -a -- "$bundle" "$tree/usr/lib/welds"
mv -- "$tree/usr/lib/welds/share/"* "$tree/usr/share/"
rmdir -- "$tree/usr/lib/welds/share"
mv -- "$tree/usr/lib/welds/licences" "$tree/usr/share/doc/welds/licences"
ln -s ../../share/doc/welds/licences "$tree/usr/lib/welds/licences"
ln -s ../lib/welds/welds "$tree/usr/bin/welds"
gzip -9nc "$root/CHANGELOG.md" >"$tree/usr/share/doc/welds/changelog.gz"
cat >"$tree/usr/share/doc/welds/copyright" <<END
Welds is under the Apache License 2.0 (/usr/share/common-licenses/Apache-2.0).
What it is made from, and under which licences, is in /usr/share/doc/welds/licences/THIRD-PARTY-NOTICES.txt.
END
cat >"$tree/DEBIAN/control" <<END
Package: welds
Version: $version
Architecture: $arch
Maintainer: The makers of Welds <welds@localhost>
Installed-Size: $(du -ks "$tree/usr" | cut -f1)
Depends: libc6 (>= 2.34), libstdc++6, libgcc-s1, libgl1, libegl1, libdbus-1-3, libfontconfig1, libglib2.0-0 | libglib2.0-0t64, libxcb-cursor0, libxcb-icccm4, libxcb-keysyms1, libxcb-shape0, libxkbcommon-x11-0
Recommends: libwayland-cursor0, libwayland-egl1, libcups2 | libcups2t64
Section: science
Priority: optional
Description: set-ups for TIG and MIG welds, each figure with range, reason and source
 From metal, thickness, joint and position to one card with every setting, the
 preparation and the cautions. Works without a network; brings its own Python
 and Qt.
END
chmod -R u=rwX,go=rX "$tree"
find "$tree" -exec touch -hd "@$SOURCE_DATE_EPOCH" {} +
package=$dist/welds_${version}_$arch.deb
dpkg-deb --root-owner-group -Zzstd -z9 --build "$tree" "$package" >/dev/null
echo "$package"
