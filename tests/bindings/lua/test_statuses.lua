-- Every status the library can give through a binding is given here once; the calls stand in statuses.json, for Python too.
local here = arg[1] or "tests/bindings"
package.path = here .. "/lua/?.lua;" .. package.path
local frame = require "frame"
local statuses = require("json").read(here .. "/statuses.json")

local function failure_of(call, ...)
  local fine, failure = pcall(call, ...)
  assert(not fine and type(failure) == "table", tostring(failure))
  return failure
end

for _, row in ipairs(statuses.produced) do
  local status, name, given = row[1], row[2], row[3]
  for key, value in pairs(given) do
    if value == "NaN" then given[key] = 0 / 0 end
  end
  local failure = failure_of(frame[name], given)
  assert(failure.status == status, ("%s: %s (%s)"):format(status, tostring(failure), tostring(failure.status)))
  assert(failure.field ~= "" and tostring(failure):sub(1, #failure.field) == failure.field, tostring(failure))
end
local drawing = frame.drawing()
local failure = failure_of(drawing.write_svg, drawing, here .. "/no such folder/drawing.svg")
assert(failure.status == "not written", tostring(failure))
