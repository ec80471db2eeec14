#!/bin/sh
# Hands this folder out to devices near this one, with what the system has: python3, or else busybox (that way was not tried).
# sh start-on-linux.sh [port]
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
if command -v python3 >/dev/null 2>&1; then
  asked="$port"
  port="$(free_port "$asked")"
  if [ -z "$port" ]; then
    echo "Another program has port $asked, and none of the next hundred is free. Give one yourself: sh start-on-linux.sh 9000" >&2
    exit 1
  fi
  if [ "$port" != "$asked" ]; then
    echo "Another program has port $asked. This folder is at port $port."
  fi
fi
echo "This folder is handed out until you press Ctrl+C or close this window. On this device: http://localhost:$port/"
for address in $(hostname -I 2>/dev/null || hostname -i 2>/dev/null); do
  case "$address" in
    *:* | 127.*) ;;
    *) echo "On a device near this one, in the same network: http://$address:$port/" ;;
  esac
done
if command -v python3 >/dev/null 2>&1; then
  exec python3 -m http.server "$port"
elif command -v busybox >/dev/null 2>&1 && busybox httpd --help >/dev/null 2>&1; then
  exec busybox httpd -f -p "$port" -h .
fi
echo "Neither python3 nor busybox is on this device. Either is in every Linux system’s own list of programs." >&2
exit 1
