-- Every name of the annotations is there at run time, and every name there is annotated.
local frame = require "frame"
local path = package.cpath:match "([^;]*)%?%.so" .. "frame_annotations.lua"
local file = assert(io.open(path))
local text = file:read "a"
file:close()
assert(load(text))
assert(text:find "\nlocal frame = {}\n" and text:find "\nreturn frame\n$")

local annotated = {}
for name in text:gmatch "\nfunction frame%.([%w_]+)%(" do annotated[name] = true end
annotated.version = true
for name in pairs(annotated) do assert(frame[name] ~= nil, "annotated, but not there: " .. name) end
for name in pairs(frame) do assert(annotated[name], "there, but not annotated: " .. name) end

local classes = {}
for name in text:gmatch "\n%-%-%-@class frame%.([%w_]+)" do
  assert(not classes[name], "twice: " .. name)
  classes[name] = true
end
for name in text:gmatch "frame%.([%w_]+)[%]%)|%s]" do
  assert(classes[name] or name == "measure" or annotated[name], "not a class: " .. name)
end

-- methods of handles
local good = { run_in = 75, slope = 0.5, depth_in = 5.5, seat_in = 3 }
local made = { working = frame.working(), drawing = frame.drawing(), stick = frame.rafter(good):stick() }
local count = 0
for handle, method in text:gmatch "\nfunction (%w+):([%w_]+)%(" do
  if made[handle] then
    assert(made[handle][method], handle .. ":" .. method)
    count = count + 1
  end
end
assert(count > 20, count)
