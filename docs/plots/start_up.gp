# SPDX-License-Identifier: BSL-1.0
# Draws start_up_course.svg and start_up_seeding.svg; called by start_up.sh with the tables in its working directory.
set terminal svg size 760,360 dynamic font "sans-serif,13" background rgb "white"
set grid lc rgb "#dddddd"
set border 3 lc rgb "#555555"
set tics nomirror
set key samplen 2
set xlabel "days"

set ylabel "mg/L, as nitrogen"

set output out . "/start_up_course.svg"
set multiplot layout 1,2
set key inside right center
set yrange [0:2.2]
set title "constants as published"
plot "course.txt" using 1:2 with lines lw 2 lc rgb "#d1495b" title "ammonia", \
     "" using 1:3 with lines lw 2 lc rgb "#edae49" title "nitrite", \
     "" using 1:4 with lines lw 2 lc rgb "#00798c" title "nitrate"
set title "growth at 0.4 of that"
unset key
plot "course.txt" using 1:5 with lines lw 2 lc rgb "#d1495b" title "ammonia", \
     "" using 1:6 with lines lw 2 lc rgb "#edae49" title "nitrite", \
     "" using 1:7 with lines lw 2 lc rgb "#00798c" title "nitrate"
unset multiplot

set output out . "/start_up_seeding.svg"
set multiplot layout 1,2
set key inside right top
set yrange [0:5]
set title "ammonia"
plot "seeding.txt" using 1:2 with lines lw 2 lc rgb "#d1495b" title "no rock", \
     "" using 1:3 with lines lw 2 lc rgb "#edae49" title "a tenth", \
     "" using 1:4 with lines lw 2 lc rgb "#66a182" title "a quarter", \
     "" using 1:5 with lines lw 2 lc rgb "#00798c" title "half", \
     "" using 1:6 with lines lw 2 lc rgb "#2e4057" title "all"
set title "nitrite"
unset key
set yrange [0:8]
plot "seeding.txt" using 1:7 with lines lw 2 lc rgb "#d1495b" title "no rock", \
     "" using 1:8 with lines lw 2 lc rgb "#edae49" title "a tenth", \
     "" using 1:9 with lines lw 2 lc rgb "#66a182" title "a quarter", \
     "" using 1:10 with lines lw 2 lc rgb "#00798c" title "half", \
     "" using 1:11 with lines lw 2 lc rgb "#2e4057" title "all"
unset multiplot
