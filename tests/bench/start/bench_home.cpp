// SPDX-License-Identifier: GPL-3.0-or-later
// The program as it is, with the watch for its first painted screen linked in.
#include "shell/run_bench.h"

int main(int argc, char** argv) { return strandbench::runBench(argc, argv); }
