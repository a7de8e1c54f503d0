# SPDX-License-Identifier: BSL-1.0
# For a compiler that is not the host's: the host's Boost, toml++ and nlohmann-json are headers alone and serve here too; a
# folder of links keeps the rest of /usr/include out. Sets ${host}, the folder.
set(TANKWRIGHT_HOST_HEADERS /usr/include CACHE PATH "Where boost/, toml++/ and nlohmann/ are")
set(host ${CMAKE_CURRENT_BINARY_DIR}/host)
file(MAKE_DIRECTORY ${host})
foreach(folder boost toml++ nlohmann)
  if(NOT EXISTS ${TANKWRIGHT_HOST_HEADERS}/${folder})
    message(FATAL_ERROR "${TANKWRIGHT_HOST_HEADERS} has no ${folder}/")
  endif()
  file(CREATE_LINK ${TANKWRIGHT_HOST_HEADERS}/${folder} ${host}/${folder} SYMBOLIC)
endforeach()
set(Boost_NO_BOOST_CMAKE ON)
set(Boost_INCLUDE_DIR ${host})
foreach(target tomlplusplus::tomlplusplus nlohmann_json::nlohmann_json)
  add_library(${target} INTERFACE IMPORTED GLOBAL)
  target_include_directories(${target} SYSTEM INTERFACE ${host})
endforeach()
