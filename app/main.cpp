// SPDX-License-Identifier: GPL-3.0-or-later
// The arguments decide before any application object exists: a command runs as a plain console program,
// anything else opens the bench.
#include "headless/headless.h"

#ifdef STRANDBENCH_HAS_BENCH
#include "shell/run_bench.h"
#endif

int main(int argc, char** argv)
{
#ifdef STRANDBENCH_HAS_BENCH
    if (!strandbench::headless::wanted(argc, argv))
        return strandbench::runBench(argc, argv);
#endif
    return strandbench::headless::run(argc, argv);
}
