# SPDX-License-Identifier: GPL-3.0-or-later
# One INTERFACE target carries every compiler flag of ours; each flag has its reason beside it.
add_library(strandbench_flags INTERFACE)
add_library(Strandbench::Flags ALIAS strandbench_flags)

target_compile_options(strandbench_flags INTERFACE
  -Wall -Wextra          # the base set: nearly every report is a slip
  -Wpedantic             # ISO C++ only, so that both g++ and clang read the code alike
  -Wshadow               # a shadowed member or parameter is read as the other one
  -Wconversion           # a lost fraction or range is a wrong mass or a wrong time
  -Wsign-conversion      # an index that wraps is a crash on a screen
  -Wdouble-promotion     # float has no place in the engine; say so if it slips in
  -Wold-style-cast       # C casts hide which of four casts is meant
  -Wnon-virtual-dtor     # deleting through a base without one is undefined
  -Woverloaded-virtual   # an override that misses its target is never called
  -Wformat=2             # printf-style reports in the headless commands
  -Wundef                # a misspelt macro is silently 0
  $<$<CXX_COMPILER_ID:GNU>:-Wduplicated-cond>      # the second branch is dead: a copy-paste slip
  $<$<CXX_COMPILER_ID:GNU>:-Wduplicated-branches>  # both branches alike: one was meant otherwise
  $<$<CXX_COMPILER_ID:GNU>:-Wlogical-op>           # && for &, || for |
  $<$<BOOL:${STRANDBENCH_WERROR}>:-Werror>         # presets and CI; never a stranger's plain build
)
target_compile_definitions(strandbench_flags INTERFACE
  QT_NO_CAST_FROM_ASCII            # every literal says its encoding, so no umlaut is lost
  QT_NO_CAST_TO_ASCII              # and none is lost on the way out
  QT_NO_KEYWORDS                   # 'signals' and 'slots' stay ordinary words
  QT_DISABLE_DEPRECATED_BEFORE=0x060400  # the oldest Qt supported
  QT_NO_FOREACH                    # one way to loop
)
if(STRANDBENCH_SANITIZE)
  # Own code and tests alike: mixing sanitized and plain containers reports false errors.
  target_compile_options(strandbench_flags INTERFACE
    -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer
    # g++ 12 loses track of a variant's members among the checks put in; the plain builds keep the warning.
    $<$<CXX_COMPILER_ID:GNU>:-Wno-maybe-uninitialized>)
  target_link_options(strandbench_flags INTERFACE -fsanitize=address,undefined)
endif()
if(STRANDBENCH_COVERAGE)
  # Tests too: what is inline in a header of core is counted where it is called. Atomic, for what runs in threads.
  target_compile_options(strandbench_flags INTERFACE --coverage -fprofile-update=atomic)
  target_link_options(strandbench_flags INTERFACE --coverage)
endif()
if(STRANDBENCH_FUZZ)
  if(NOT CMAKE_CXX_COMPILER_ID STREQUAL "Clang")
    message(FATAL_ERROR "STRANDBENCH_FUZZ needs clang: configure with --preset fuzz")
  endif()
  target_compile_options(strandbench_flags INTERFACE
    -fsanitize=fuzzer-no-link,address,undefined,float-cast-overflow  # what a parser may do wrong, and what was reached
    -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_compile_definitions(strandbench_flags INTERFACE _GLIBCXX_ASSERTIONS) # an index beyond the end is a find too
  target_link_options(strandbench_flags INTERFACE -fsanitize=address,undefined)
endif()
