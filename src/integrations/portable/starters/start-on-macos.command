#!/bin/sh
# Hands this folder out to devices near this one, with the python3 of Apple's command line tools. Not tried by its makers.
# The first port from there on that no other program has, if any of the next hundred is free.
free_port() {
  python3 -c '
import socket, sys
for port in range(int(sys.argv[1]), int(sys.argv[1]) + 100):
    with socket.socket() as tried:
        tried.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            tried.bind(("", port))
        except OSError:
            continue
        print(port)
        break
' "$1"
}
cd "$(dirname "$0")" || exit 1
port="${1:-8000}"
if [ ! -f index.html ]; then
  echo "index.html is not beside this file. Extract the whole zip, and start it in the folder that comes of it." >&2
  exit 1
fi
if ! python3 --version >/dev/null 2>&1; then
  echo "python3 is not on this Mac yet. Type: xcode-select --install" >&2
  exit 1
fi
asked="$port"
port="$(free_port "$asked")"
if [ -z "$port" ]; then
  echo "Another program has port $asked, and none of the next hundred is free. Give one yourself: sh start-on-macos.command 9000" >&2
  exit 1
fi
if [ "$port" != "$asked" ]; then
  echo "Another program has port $asked. This folder is at port $port."
fi
echo "This folder is handed out until you press Ctrl+C or close this window. On this device: http://localhost:$port/"
for device in en0 en1; do
  address="$(ipconfig getifaddr "$device" 2>/dev/null)" && echo "On a device near this one, in the same network: http://$address:$port/"
done
exec python3 -m http.server "$port"
