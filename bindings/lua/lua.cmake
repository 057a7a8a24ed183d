# build/lua/frame.so: require "frame".
find_package(PkgConfig REQUIRED)
pkg_check_modules(LUA REQUIRED lua5.4)

frame_swig(lua ${bound_made_dir}/frame_lua.c -nomoduleglobal -no-old-metatable-bindings)
file(GLOB lua_sources CONFIGURE_DEPENDS ${here}/lua/*.c)
add_library(frame_lua MODULE ${lua_sources} ${bound_made_dir}/frame_lua.c $<TARGET_OBJECTS:frame_bound>)
frame_binding(frame_lua)
target_include_directories(frame_lua PRIVATE ${here}/lua ${LUA_INCLUDE_DIRS})
target_link_libraries(frame_lua PRIVATE frame_static m)
target_link_options(frame_lua PRIVATE -Wl,--exclude-libs,ALL)
set_target_properties(frame_lua PROPERTIES PREFIX "" OUTPUT_NAME frame LIBRARY_OUTPUT_DIRECTORY ${PROJECT_BINARY_DIR}/lua)
add_dependencies(frame_lua frame_bound_made)

install(TARGETS frame_lua COMPONENT lua DESTINATION ${CMAKE_INSTALL_LIBDIR}/lua/5.4)
