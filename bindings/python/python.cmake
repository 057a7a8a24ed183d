# build/python/frame/: __init__.py and its stubs made from api.json, and one extension for each kind of Python that is asked
# for. The name of an extension says which it is, so several stand side by side.
set(python_package ${PROJECT_BINARY_DIR}/python/frame)
if(FRAME_ARCHIVE)
  file(COPY ${PROJECT_SOURCE_DIR}/made/python/frame DESTINATION ${PROJECT_BINARY_DIR}/python)
endif()
set(FRAME_PYTHONS "" CACHE STRING "Pythons to build for; empty: the first python3 on PATH, and /usr/bin/python3")
set(pythons ${FRAME_PYTHONS})
if(NOT pythons)
  find_program(frame_first_python NAMES python3)
  set(pythons ${frame_first_python} /usr/bin/python3)
endif()

# suffix and include folder of each; the same suffix is built once
set(python_suffixes "")
foreach(python ${pythons})
  execute_process(COMMAND ${python} -c
    "import os, sysconfig; i = sysconfig.get_paths()['include']; print(sysconfig.get_config_var('EXT_SUFFIX'), i if os.path.exists(os.path.join(i, 'Python.h')) else '', sep=';')"
    OUTPUT_VARIABLE found OUTPUT_STRIP_TRAILING_WHITESPACE RESULT_VARIABLE failed ERROR_QUIET)
  if(failed OR NOT found)
    continue()
  endif()
  list(GET found 0 suffix)
  list(GET found 1 include)
  if(suffix IN_LIST python_suffixes)
    continue()
  elseif(include)
    list(APPEND python_suffixes ${suffix})
    list(APPEND python_includes ${include})
  else()
    message(WARNING "${python} has no headers (Python.h): the package is not built for it")
  endif()
endforeach()
if(NOT python_suffixes)
  message(FATAL_ERROR "No Python with headers was found; set FRAME_PYTHONS, or FRAME_PYTHON=OFF")
endif()

frame_make(OUTPUT ${python_package}/__init__.py ${python_package}/__init__.pyi ${python_package}/py.typed
  COMMAND ${Python3_EXECUTABLE} ${here}/generate/python_module.py ${facts_made_dir}/api.json ${python_package}
  COMMAND ${CMAKE_COMMAND} -E touch ${python_package}/__init__.py ${python_package}/__init__.pyi ${python_package}/py.typed
  DEPENDS ${facts_made_dir}/stamp ${bound_generators} COMMENT "Making the Python package" VERBATIM)
frame_make(OUTPUT ${python_package}/_more.py ${python_package}/_more.pyi ${python_package}/_frame.pyi
  COMMAND ${CMAKE_COMMAND} -E copy ${here}/python/more.py ${python_package}/_more.py
  COMMAND ${CMAKE_COMMAND} -E copy ${here}/python/more.pyi ${python_package}/_more.pyi
  COMMAND ${CMAKE_COMMAND} -E copy ${here}/python/extension.pyi ${python_package}/_frame.pyi
  DEPENDS ${here}/python/more.py ${here}/python/more.pyi ${here}/python/extension.pyi VERBATIM)
add_custom_target(frame_python_package ALL DEPENDS ${python_package}/__init__.py ${python_package}/_more.py)
add_dependencies(frame_python_package frame_made_facts)

frame_swig(python ${bound_made_dir}/frame_python.c -noproxy -threads -module _frame)
# SWIG 4.1 knows nothing of the fields that Python 3.12 added to its types.
set_source_files_properties(${bound_made_dir}/frame_python.c PROPERTIES COMPILE_OPTIONS -Wno-missing-field-initializers)
file(GLOB python_sources CONFIGURE_DEPENDS ${here}/python/*.c)
set(FRAME_PYTHON_DIR lib/python3/dist-packages CACHE STRING "Where the Python package is installed")
foreach(suffix include IN ZIP_LISTS python_suffixes python_includes)
  string(MAKE_C_IDENTIFIER frame_python${suffix} target)
  add_library(${target} MODULE ${python_sources} ${bound_made_dir}/frame_python.c $<TARGET_OBJECTS:frame_bound>)
  frame_binding(${target})
  target_include_directories(${target} PRIVATE ${here}/python)
  target_include_directories(${target} SYSTEM PRIVATE ${include})
  target_link_libraries(${target} PRIVATE frame_static m)
  target_link_options(${target} PRIVATE -Wl,--exclude-libs,ALL ${FRAME_PACKING})
  set_target_properties(${target} PROPERTIES PREFIX "" OUTPUT_NAME _frame SUFFIX ${suffix} LIBRARY_OUTPUT_DIRECTORY ${python_package})
  add_dependencies(${target} frame_bound_made frame_python_package)
  install(TARGETS ${target} COMPONENT python DESTINATION ${FRAME_PYTHON_DIR}/frame)
endforeach()
install(FILES ${python_package}/__init__.py ${python_package}/__init__.pyi ${python_package}/_more.py
  ${python_package}/_more.pyi ${python_package}/_frame.pyi ${python_package}/py.typed
  COMPONENT python DESTINATION ${FRAME_PYTHON_DIR}/frame)
