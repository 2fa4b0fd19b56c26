# `cpack` makes a Debian package of what is installed: sh cmake/package.sh builds, packs and looks it over.
if(NOT LOAMSTEAD_BUILD_APP)
  return()
endif()
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME loamstead)
set(CPACK_PACKAGE_VERSION ${PROJECT_VERSION})
set(CPACK_PACKAGE_CONTACT "Loamstead developers <developers@loamstead.invalid>") # a domain that is nobody's, RFC 2606
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
set(CPACK_DEBIAN_PACKAGE_SECTION misc)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "plans indoor enclosures for reptiles and frogs, and costs them")
set(CPACK_PACKAGE_DESCRIPTION
    "Works out before anything is bought what an enclosure for land turtles,
tortoises, lizards, snakes or frogs needs: floor area now and grown, substrate
in whole packs, lamps and mats with the temperatures that result in winter and
summer, UV, humidity, water, electricity, and what it costs to begin and to
run. A form, a drawing to scale, printed sheets and a command line.
.
Figures are predictions with a range: an enclosure is proved with thermometers
before an animal moves in.")
set(CPACK_PRE_BUILD_SCRIPTS ${PROJECT_SOURCE_DIR}/cmake/CompressManuals.cmake)
set(CPACK_DEBIAN_PACKAGE_CONTROL_STRICT_PERMISSION ON)
# What a Debian package has beside the program: its terms, and its changes in Debian's form.
string(TIMESTAMP package_date "%a, %d %b %Y %H:%M:%S +0000" UTC)
configure_file(${PROJECT_SOURCE_DIR}/resources/linux/debian-changelog.in ${PROJECT_BINARY_DIR}/debian/changelog @ONLY)
find_program(gzip_program gzip)
if(gzip_program)
  execute_process(COMMAND ${gzip_program} -9nkf ${PROJECT_BINARY_DIR}/debian/changelog)
  install(FILES ${PROJECT_BINARY_DIR}/debian/changelog.gz DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/loamstead
          COMPONENT debian EXCLUDE_FROM_ALL)
endif()
install(FILES ${PROJECT_SOURCE_DIR}/resources/linux/debian-copyright RENAME copyright
        DESTINATION ${CMAKE_INSTALL_DATADIR}/doc/loamstead COMPONENT debian EXCLUDE_FROM_ALL)
set(CPACK_COMPONENTS_ALL Unspecified debian)
set(CPACK_COMPONENTS_GROUPING ALL_COMPONENTS_IN_ONE)
set(CPACK_DEB_COMPONENT_INSTALL ON)
include(CPack)
