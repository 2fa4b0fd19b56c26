# Run by CPack over what is to be packed: Debian wants its manual pages compressed, without the time in them.
file(GLOB_RECURSE manuals ${CPACK_TEMPORARY_DIRECTORY}/*.1)
if(manuals)
  execute_process(COMMAND gzip -9n ${manuals} COMMAND_ERROR_IS_FATAL ANY)
endif()
