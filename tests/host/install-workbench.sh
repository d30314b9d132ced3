#!/usr/bin/env bash
# Installs a browser-served VS Code workbench from the npm package code-server into a folder.
# Its own installation step wants more than the npm registry, so the pieces are installed and built one by one.
# Needs a C++ compiler, make, python3 and ripgrep. Usage: install-workbench.sh FOLDER
set -euo pipefail
folder=${1:?usage: install-workbench.sh FOLDER}
version=4.100.3
quiet=(--ignore-scripts --no-audit --no-fund --loglevel=error)

mkdir -p "$folder"
cd "$folder"
echo '{"private":true}' > package.json
npm install "${quiet[@]}" "code-server@$version"
host=$PWD/node_modules/code-server
workbench=$host/lib/vscode

npm install "${quiet[@]}" --prefix "$workbench" --omit=dev
npm install "${quiet[@]}" --prefix "$workbench" --omit=dev --no-save @parcel/watcher-linux-x64-glibc@2.5.1
npm install "${quiet[@]}" --prefix "$workbench/extensions" --omit=dev

# An addon counts when it is there: the step after one build asks for the network and may fail.
for addon in @vscode/spdlog node-pty native-watchdog; do
  npm rebuild --prefix "$workbench" "$addon" > "$folder/build.log" 2>&1 || true
  compgen -G "$workbench/node_modules/$addon/build/Release/*.node" > /dev/null || {
    echo "not built: $addon" >&2
    tail -20 "$folder/build.log" >&2
    exit 1
  }
done
(cd node_modules/argon2 && npx --no-install node-pre-gyp install --build-from-source) > "$folder/build.log" 2>&1 || {
  tail -20 "$folder/build.log" >&2
  exit 1
}
ln -sfn node_modules "$workbench/node_modules.asar"
# File search wants ripgrep where its package would have put a download.
mkdir -p "$workbench/node_modules/@vscode/ripgrep/bin"
ln -sfn "$(command -v rg)" "$workbench/node_modules/@vscode/ripgrep/bin/rg"
node "$host/out/node/entry.js" --version > installed
