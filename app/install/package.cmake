# SPDX-License-Identifier: GPL-3.0-or-later
# The Debian package, by `cpack` in a folder built with the preset 'package'. It has no scripts of its own: nothing runs
# when it is installed or removed, and a bench's log, in a home folder, is not its business.
set(CPACK_GENERATOR DEB)
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_PACKAGE_NAME strandbench)
set(CPACK_PACKAGE_CONTACT "Strandbench <maintainers@strandbench.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "bench assistant for repairs with fibre-reinforced filler")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Strandbench stands on the bench beside a body technician who mends holes,
cracks, low spots and seams in vehicle panels with peroxide-cured,
fibre-reinforced polyester filler. It says whether the panel may be filled at
all and with which filler, works out batches, lifts and the bead of hardener,
follows cure and heat through the layer, counts each running mix down, and
writes every confirmed act into a log that shows whether it was changed.

It is made for a touch panel and gloves, needs no network, and answers on the
command line too. The product sheets that come with it are invented.")
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_COMPRESSION_TYPE xz)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
# By its component: packing leaves the manifest of an installation as it was.
set(CPACK_INSTALL_CMAKE_PROJECTS "${PROJECT_BINARY_DIR};${PROJECT_NAME};strandbench;/")
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS
  OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)

# What the program is linked to, dpkg-shlibdeps finds. It cannot see what is loaded or looked up while it runs:
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
string(JOIN ", " CPACK_DEBIAN_PACKAGE_DEPENDS
  libqt6sql6-sqlite   # the driver under the log
  fonts-b612          # the font that all screens are measured for
  fonts-dejavu-core   # signs that B612 lacks
  tzdata)             # the bench's own clock
string(JOIN ", " CPACK_DEBIAN_PACKAGE_RECOMMENDS
  libasound2          # tones; without it the ribbon says that nothing can sound
  libxcb-dpms0        # wakes a sleeping glass under X11
  qt6-qpa-plugins     # other platforms of Qt than X11
  qt6-wayland)        # a session without X11
set(CPACK_DEBIAN_PACKAGE_SUGGESTS cups) # printers; without one sheets are PDF

# Every date in the package is that of the commit: see there.
configure_file(package_date.cmake.in package_date.cmake @ONLY)
set(CPACK_PROJECT_CONFIG_FILE ${CMAKE_CURRENT_BINARY_DIR}/package_date.cmake)
include(CPack)
