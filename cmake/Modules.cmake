# One static library per folder of core and app, so that the link line says who may know whom.

# loam_core_module(<folder> [USES <module>...] [PRIVATE <library>...]): core/<folder>/*.cpp
function(loam_core_module folder)
  cmake_parse_arguments(arg "" "" "USES;PRIVATE" ${ARGN})
  file(GLOB sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/${folder}/*.cpp)
  if(NOT sources) # headers only
    add_library(core_${folder} INTERFACE)
    target_link_libraries(core_${folder} INTERFACE loamstead_options)
    foreach(used IN LISTS arg_USES)
      target_link_libraries(core_${folder} INTERFACE core_${used})
    endforeach()
    return()
  endif()
  add_library(core_${folder} STATIC ${sources})
  target_link_libraries(core_${folder} PUBLIC loamstead_options PRIVATE ${arg_PRIVATE})
  foreach(used IN LISTS arg_USES)
    target_link_libraries(core_${folder} PUBLIC core_${used})
  endforeach()
  set_target_properties(core_${folder} PROPERTIES AUTOMOC OFF)
endfunction()
