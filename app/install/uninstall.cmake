# SPDX-License-Identifier: GPL-3.0-or-later
# Takes away what an installation put there, by its manifest, and nothing else: what a bench wrote is not in it.
#   cmake -DMANIFEST=FILE -P uninstall.cmake        DESTDIR as it was when it was installed
if(NOT EXISTS "${MANIFEST}")
  message(FATAL_ERROR "${MANIFEST} is not there: nothing was installed from this folder.")
endif()
file(STRINGS "${MANIFEST}" installed)
foreach(file IN LISTS installed)
  set(file "$ENV{DESTDIR}${file}")
  if(EXISTS "${file}" OR IS_SYMLINK "${file}")
    message(STATUS "Removing: ${file}")
    file(REMOVE "${file}")
    if(EXISTS "${file}" OR IS_SYMLINK "${file}")
      message(FATAL_ERROR "${file} could not be removed.")
    endif()
  else()
    message(STATUS "Was gone already: ${file}")
  endif()
endforeach()
