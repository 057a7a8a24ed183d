# build/lua/frame.so: require "frame".
set(FRAME_LUA_INCLUDE "" CACHE PATH "Where lua.h is; empty: as pkg-config lua5.4 says")
if(FRAME_LUA_INCLUDE)
  set(LUA_INCLUDE_DIRS ${FRAME_LUA_INCLUDE})
else()
  find_package(PkgConfig REQUIRED)
  pkg_check_modules(LUA REQUIRED lua5.4)
endif()

frame_swig(lua ${bound_made_dir}/frame_lua.c -nomoduleglobal -no-old-metatable-bindings)
file(GLOB lua_sources CONFIGURE_DEPENDS ${here}/lua/*.c)
add_library(frame_lua MODULE ${lua_sources} ${bound_made_dir}/frame_lua.c $<TARGET_OBJECTS:frame_bound>)
frame_binding(frame_lua)
target_include_directories(frame_lua PRIVATE ${here}/lua ${LUA_INCLUDE_DIRS})
target_link_libraries(frame_lua PRIVATE frame_static m)
target_link_options(frame_lua PRIVATE -Wl,--exclude-libs,ALL ${FRAME_PACKING})
set_target_properties(frame_lua PROPERTIES PREFIX "" OUTPUT_NAME frame LIBRARY_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/lua)
add_dependencies(frame_lua frame_bound_made)

set(FRAME_LUA_DIR ${CMAKE_INSTALL_LIBDIR}/lua/5.4 CACHE STRING "Where the Lua module is installed")
install(TARGETS frame_lua COMPONENT lua DESTINATION ${FRAME_LUA_DIR})

# What an editor needs to know of the module.
set(lua_annotations ${PROJECT_BINARY_DIR}/lua/frame_annotations.lua)
if(FRAME_ARCHIVE)
  set(lua_annotations ${PROJECT_SOURCE_DIR}/made/lua/frame_annotations.lua)
endif()
frame_make(OUTPUT ${lua_annotations}
  COMMAND ${CMAKE_COMMAND} -E make_directory ${PROJECT_BINARY_DIR}/lua
  COMMAND ${Python3_EXECUTABLE} ${here}/generate/lua_annotations.py ${facts_made_dir}/api.json ${lua_annotations}
  COMMAND ${CMAKE_COMMAND} -E touch ${lua_annotations}
  DEPENDS ${facts_made_dir}/stamp ${bound_generators} COMMENT "Writing the Lua annotations" VERBATIM)
add_custom_target(frame_lua_annotations ALL DEPENDS ${lua_annotations})
add_dependencies(frame_lua_annotations frame_made_facts)
install(FILES ${lua_annotations} COMPONENT lua DESTINATION ${CMAKE_INSTALL_DATADIR}/frame-carpentry/lua)
