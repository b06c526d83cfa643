# SPDX-License-Identifier: GPL-3.0-or-later
cmake_minimum_required(VERSION 3.25)
# Configures a small project with a dependency of core on engine; it must be refused for that reason.
set(FOLDER ${CMAKE_CURRENT_BINARY_DIR}/forbidden_arrow)
file(READ ${SOURCE}/src/rooms.cmake TABLE)
string(REPLACE "\nadd_room(core)\n" "\nadd_room(core SEES engine)\n" PLANTED "${TABLE}")
if(PLANTED STREQUAL TABLE)
  message(FATAL_ERROR "the planted arrow found no place in src/rooms.cmake")
endif()
file(REMOVE_RECURSE ${FOLDER})
file(WRITE ${FOLDER}/CMakeLists.txt
  "cmake_minimum_required(VERSION 3.25)\nproject(planted LANGUAGES NONE)\ninclude(rooms.cmake)\n")
file(WRITE ${FOLDER}/rooms.cmake "${PLANTED}")
execute_process(COMMAND ${CMAKE_COMMAND} -G Ninja -S ${FOLDER} -B ${FOLDER}/build RESULT_VARIABLE CODE ERROR_VARIABLE SAID OUTPUT_QUIET)
file(REMOVE_RECURSE ${FOLDER})
if(CODE EQUAL 0 OR NOT SAID MATCHES "src/core may not see src/engine")
  message(FATAL_ERROR "a forbidden arrow was not refused:\n${SAID}")
endif()
