# The Debian package: build the programs, then `cpack -G DEB` in the build folder.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME lobewright)
set(CPACK_PACKAGE_VENDOR "Lobewright developers")
set(CPACK_PACKAGE_CONTACT "Lobewright developers <developers@lobewright.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "${PROJECT_DESCRIPTION}")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Lobewright draws and computes engines whose opposed pistons run on undulating
 axial tracks around a shaft: motion, port timing, gas cycle, torque, contact
 stress, balance, and how they compare with cranks of the same size.
 .
 Lobes and ports are dragged where they are seen. The same computations run
 without a screen with lobewright-cli. All figures are estimates for comparing
 designs; they release nothing to manufacture or use.")
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
if(LOBEWRIGHT_DESKTOP)
  # Loaded at run time, where no linker sees them.
  set(CPACK_DEBIAN_PACKAGE_DEPENDS "qt6-qpa-plugins")
  set(CPACK_DEBIAN_PACKAGE_RECOMMENDS "qt6-translations-l10n")
endif()
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
# Folders of a package are readable by all, whatever the umask of who packs.
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE
    GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
include(CPack)
