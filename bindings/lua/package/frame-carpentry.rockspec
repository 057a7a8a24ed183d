rockspec_format = "3.0"
package = "frame-carpentry"
version = "@VERSION@-1"
source = { url = "file://frame-carpentry-@VERSION@.tar.gz", dir = "frame-carpentry-@VERSION@" }
description = {
   summary = "Wood framing: does it fit, does it hold, what do I buy and cut",
   license = "MIT",
}
dependencies = { "lua >= 5.4, < 5.5" }
-- The library is compiled into the module. What SWIG and the generators write came with the archive.
build = {
   type = "cmake",
   variables = {
      CMAKE_BUILD_TYPE = "Release",
      CMAKE_INSTALL_PREFIX = "$(PREFIX)",
      FRAME_LIBRARY = "OFF",
      FRAME_PYTHON = "OFF",
      FRAME_LUA = "ON",
      FRAME_LUA_INCLUDE = "$(LUA_INCDIR)",
      FRAME_LUA_DIR = "$(LIBDIR)",
      BUILD_TESTING = "OFF",
   },
}
