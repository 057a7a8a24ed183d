/** @file version.h
 * The one place where the version stands. CMake, the bindings and the packages read it from here.
 */
#ifndef FRAME_VERSION_H
#define FRAME_VERSION_H

#define FRAME_VERSION_MAJOR 0
#define FRAME_VERSION_MINOR 1
#define FRAME_VERSION_PATCH 0

#endif
