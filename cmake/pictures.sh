#!/bin/sh
# Takes the pictures of all screens: both themes, two sizes and twice the size, all languages.
# Run after a build:  sh cmake/pictures.sh FOLDER
set -eu
cd "$(dirname "$0")/.."
folder=${1:?where the pictures go}
program=$(find build -name desk_pictures -type f | head -n 1)
[ -n "$program" ] || { echo "Build first: sh cmake/check.sh" >&2; exit 1; }
export QT_QPA_PLATFORM=offscreen
for language in en de es; do
    for theme in light dark; do
        for size in 1280x800 1920x1080; do
            "$program" --language $language --theme $theme --size $size --set "$folder/$language-$theme-$size"
        done
    done
    QT_SCALE_FACTOR=2 "$program" --language $language --size 1280x800 --set "$folder/$language-twice"
done
"$program" --mirrored --set "$folder/mirrored"
"$program" --out "$folder/window.png" --tree "$folder/screen-reader.txt"
echo "The pictures are in $folder"
