# SPDX-FileCopyrightText: 2026 The Tarebowl authors
# SPDX-License-Identifier: GPL-3.0-or-later
# The Debian package: cpack in a build folder writes it there. What it depends on is read off the program (dpkg-shlibdeps).
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME tarebowl)
set(CPACK_PACKAGE_VENDOR "The Tarebowl authors")
set(CPACK_PACKAGE_CONTACT "The Tarebowl authors <authors@tarebowl.invalid>")  # nobody reads mail there
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "diets weighed to the gram for animals in human care")
set(CPACK_PACKAGE_DESCRIPTION "Turns what an animal needs into grams of real food, for zoos and wildlife
centres. From the foods on hand and the targets of a species it finds the bowl
that meets them in whole steps of the kitchen's scale, or the nearest one
there is, and says which targets cannot hold together.
.
A kitchen weighs in by it, leftovers are counted, and what was eaten is set
beside the targets over weeks and years. What nobody measured stays unknown
and is never counted as zero.
.
It has a window, and a command line for all that it does.")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_RELEASE 1)
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
if(TAREBOWL_BUILD_UI)
  set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "fonts-dejavu-core | fonts-noto-core, qt6-translations-l10n")
  set(CPACK_DEBIAN_PACKAGE_SUGGESTS "qt6-wayland")
endif()
include(CPack)
