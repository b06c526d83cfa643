# SPDX-License-Identifier: GPL-3.0-or-later
cmake_minimum_required(VERSION 3.25)
# Installs the program, moves the installation and runs it there: a verb, and the window's first picture.
set(FOLDER ${BUILD}/moved_binary)
file(REMOVE_RECURSE ${FOLDER})
function(must)
  execute_process(COMMAND ${ARGN} WORKING_DIRECTORY ${BUILD} RESULT_VARIABLE CODE OUTPUT_VARIABLE SAID ERROR_VARIABLE SAID)
  if(NOT CODE EQUAL 0)
    message(FATAL_ERROR "${ARGN}\ngave ${CODE}:\n${SAID}")
  endif()
endfunction()
must(${CMAKE_COMMAND} --install ${BUILD} --prefix ${FOLDER}/first)
file(RENAME ${FOLDER}/first ${FOLDER}/second)
set(PROGRAM ${FOLDER}/second/bin/piolo)
must(${PROGRAM} click --tempo 90 --bars 1 --out ${FOLDER}/click.wav)
# A compressed score needs a library of the program's own, which moved with it; without that library it is a fault.
file(WRITE ${FOLDER}/score/META-INF/container.xml
  "<container><rootfiles><rootfile full-path=\"ferrywake.musicxml\"/></rootfiles></container>")
file(COPY ${SOURCE}/samples/ferrywake.musicxml DESTINATION ${FOLDER}/score)
execute_process(COMMAND ${CMAKE_COMMAND} -E tar cf ${FOLDER}/score.mxl --format=zip META-INF ferrywake.musicxml
  WORKING_DIRECTORY ${FOLDER}/score)
must(${PROGRAM} bars ${FOLDER}/score.mxl)
file(GLOB_RECURSE LIBRARIES ${FOLDER}/second/libpiolo_zip.so)
file(REMOVE ${LIBRARIES})
execute_process(COMMAND ${PROGRAM} bars ${FOLDER}/score.mxl RESULT_VARIABLE CODE ERROR_VARIABLE SAID)
if(NOT CODE EQUAL 1 OR NOT SAID MATCHES "E301: libpiolo_zip.so: ")
  message(FATAL_ERROR "without its library a compressed score gave ${CODE}:\n${SAID}")
endif()
# So does a drawing.
must(${PROGRAM} scale --key C --instrument oboe --out ${FOLDER}/scale.svg)
# Its QML must come out of the binary, so the build folder's copy is hidden while it runs.
file(RENAME ${BUILD}/qml ${BUILD}/qml.hidden)
execute_process(
  COMMAND ${CMAKE_COMMAND} -E env QT_QPA_PLATFORM=offscreen XDG_CONFIG_HOME=${FOLDER}/config XDG_STATE_HOME=${FOLDER}/state
    ${PROGRAM} --folder ${FOLDER}/practice --shot ${FOLDER}/window.png
  RESULT_VARIABLE CODE ERROR_VARIABLE SAID)
file(RENAME ${BUILD}/qml.hidden ${BUILD}/qml)
if(NOT CODE EQUAL 0 OR NOT EXISTS ${FOLDER}/window.png)
  message(FATAL_ERROR "the moved window gave ${CODE}:\n${SAID}")
endif()
file(SIZE ${FOLDER}/window.png BYTES)
if(BYTES LESS 5000)
  message(FATAL_ERROR "the moved window's picture is empty: ${BYTES} bytes")
endif()
file(REMOVE_RECURSE ${FOLDER})
