#!/bin/sh
# A double click opens Terminal with the program in it; closing that window stops it.
cd "$(dirname "$0")" && exec ./TyingClass "$@"
