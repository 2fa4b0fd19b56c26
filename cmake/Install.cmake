# What belongs beside the programs on a Linux desktop. The programs install themselves where they are built
# (app/desk, app/cli); the guidance and the examples that they use travel inside them.
if(LOAMSTEAD_BUILD_APP)
  set(app_id invalid.loamstead.Loamstead) # the domain of app/files/identity.cpp, turned round
  set(linux ${PROJECT_SOURCE_DIR}/resources/linux)
  install(FILES ${linux}/${app_id}.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
  install(FILES ${linux}/${app_id}.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
  install(FILES ${linux}/loamstead.mime.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages
          RENAME ${app_id}.xml)
  install(FILES ${PROJECT_SOURCE_DIR}/resources/icons/loamstead.svg
          DESTINATION ${CMAKE_INSTALL_DATADIR}/icons/hicolor/scalable/apps RENAME ${app_id}.svg)
  install(FILES ${linux}/loamstead.1 ${linux}/loamstead-cli.1 DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
endif()
# For other programs and for people who write their own guidance.
install(DIRECTORY ${PROJECT_SOURCE_DIR}/resources/schema DESTINATION ${CMAKE_INSTALL_DATADIR}/loamstead
        FILES_MATCHING PATTERN "*.schema.json")
set(documents ${CMAKE_INSTALL_DATADIR}/doc/loamstead)
foreach(kind species rules prices)
  install(FILES ${PROJECT_SOURCE_DIR}/resources/${kind}/README.md DESTINATION ${documents}/guidance RENAME ${kind}.md)
endforeach()
install(DIRECTORY ${PROJECT_SOURCE_DIR}/examples DESTINATION ${documents})
install(FILES ${PROJECT_SOURCE_DIR}/CHANGELOG.md ${PROJECT_SOURCE_DIR}/LICENSE DESTINATION ${documents})
