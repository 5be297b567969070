#!/bin/sh
# Copies the store while matone runs and keeps the last seven copies; for cron, once a day:
#   30 2 * * * matone /usr/local/share/matone/backup.sh /etc/matone/matone.toml /mnt/backup
# The key file is not in the copies: keep one copy of it in another place.
# To restore: systemctl stop matone; cp COPY /var/lib/matone/matone.db;
#   rm -f /var/lib/matone/matone.db-wal /var/lib/matone/matone.db-shm; systemctl start matone
set -eu
config=$1
folder=$2
mkdir -p "$folder"
matone backup --config "$config" "$folder/matone-$(date -u +%Y-%m-%d).db"
# Oldest first; all but the last seven go.
ls "$folder"/matone-????-??-??.db | head -n -7 | while read -r old; do
    rm -- "$old"
done
