-- Every field of every calculation, fed what it must refuse: the facts of the fields say what that is. Each refusal names the
-- field's path (places from 1, as Lua counts), the value and what is valid. Nothing here names a calculation.
local here = arg[1] or "tests/bindings"
package.path = here .. "/lua/?.lua;" .. package.path
local frame = require "frame"
local good = require("json").read(here .. "/good_inputs.json")

local tried = 0
local odd = { function() end, coroutine.create(function() end), io.stdout }
local long = ("x"):rep(100000)

local function refused(name, given, path, value, within)
  local called, failure = pcall(frame[name], given)
  local where = ("%s.%s = %s"):format(name, path, tostring(value):sub(1, 60))
  assert(not called, where .. " was taken")
  assert(type(failure) == "table", where .. ": " .. tostring(failure))
  if within then
    assert(failure.field:sub(1, #path) == path, ("%s: the error names %s: %s"):format(where, failure.field, failure))
  else
    assert(failure.field == path, ("%s: the error names %s: %s"):format(where, failure.field, failure))
    assert(#failure.valid > 0, where .. ": " .. failure.text)
  end
  assert(failure.text:find(failure.field, 1, true) and not failure.text:find "\n", where .. ": " .. failure.text)
  assert(#failure.status > 0 and tostring(failure) == failure.text)
  tried = tried + 1
end

local function beyond(bound, direction)
  if bound == 0 then return direction * 5e-324 end
  local step = math.abs(bound) * 2 ^ -52
  return bound + direction * step
end

local function bad_values(field)
  local values = { odd[2], odd[3] }
  if field.name ~= "watch" then values[3] = odd[1] end -- that takes a function
  local function add(...) for _, value in ipairs { ... } do values[#values + 1] = value end end
  local low, high = field.low, field.high
  if field.kind == "number" then
    add(0 / 0, math.huge, -math.huge, 1e308, -1e308, -1e300, math.maxinteger, math.mininteger)
    add(field.low_open and low or beyond(low, -1), field.high_open and high or beyond(high, 1))
    if low > 0 or (low == 0 and field.low_open) then add(0) end
    if low >= 0 then add(-1) end
    add(true, false, {}, "", " ", "no number", "1e5", "0x10", "nan", "\0", "\xff", long)
  elseif field.kind == "integer" then
    add(math.tointeger(low) and math.tointeger(low) - 1 or low - 1, math.maxinteger, math.mininteger, -2 ^ 31, 0 / 0, math.huge, 1.5, true, "2", "", {})
    if high < 2 ^ 31 - 1 then add(high + 1, 2 ^ 31 - 1) end
  elseif field.kind == "word" then
    add("", " ", "no such word", "\0", "\xff", long, "%s%n", 1, 0, -1, 1.5, true, {})
  elseif field.kind == "bool" then
    add(0, 1, 2, "yes", "", {}, 0 / 0)
  elseif field.kind == "handle" then
    add(1, 1.5, "text", true, {}, frame.working())
    if field.name ~= "watch" then add(frame.code_overlay) end
  elseif field.kind == "text" then
    add(1, 1.5, true, {}, "\0", "a\0b", "\xff", "\xed\xa0\x80")
  else
    add(1, 1.5, "text", true, { 1 == 2 }, { { true } }, { {}, [3.5] = {} }, { [true] = 1 }, { x = 1 }, { [-1] = {} }, { [1e15] = {} })
  end
  return values
end

local function copy(value)
  if type(value) ~= "table" then return value end
  local made = {}
  for key, entry in pairs(value) do made[key] = copy(entry) end
  return made
end

local walk

local function items(name, given, owner, field, path)
  local names = {}
  for _, inner in ipairs(field.element) do
    if inner.need ~= "result" then names[#names + 1] = inner.name end
  end
  local kept = owner[field.name]
  local named = {}
  for place, item in ipairs(kept) do
    named[place] = {}
    for key, value in pairs(item) do named[place][names[key] or key] = value end
  end
  owner[field.name] = named
  for place, item in ipairs(named) do
    walk(name, given, item, field.element, ("%s[%d]."):format(path, place))
    item.no_such_field = 1
    refused(name, given, ("%s[%d].no_such_field"):format(path, place), 1, true)
    item.no_such_field = nil
    item[#names + 1] = 1
    refused(name, given, ("%s[%d]."):format(path, place), "too many values", true)
    item[#names + 1] = nil
  end
  owner[field.name] = kept
end

function walk(name, given, owner, fields, before)
  for _, field in ipairs(fields) do
    if field.need ~= "result" then
      local path, kept = before .. field.name, owner[field.name]
      for _, value in ipairs(bad_values(field)) do
        owner[field.name] = value
        refused(name, given, path, value, field.kind == "list" or field.kind == "numbers" or field.kind == "words")
      end
      if field.need == "required" then
        owner[field.name] = nil
        refused(name, given, path, nil)
      end
      owner[field.name] = kept
      if kept and field.kind == "list" then items(name, given, owner, field, path) end
    end
  end
end

for _, name in ipairs(frame.calculations()) do
  local given = copy(assert(good[name], name .. ": add one good call of it to tests/bindings/good_inputs.json"))
  frame[name](given)
  walk(name, given, given, frame.fields(name), "")
  for _, value in ipairs { 1, "text", true, odd[1] } do
    local called, failure = pcall(frame[name], value)
    assert(not called and failure.status == "wrong type", tostring(failure))
  end
  frame[name](given)
  assert(not pcall(frame[name], { [{}] = 1 }) and not pcall(frame[name], { [0] = 1 }) and not pcall(frame[name], { [2 ^ 40] = 1 }))
end
assert(tried > 1000, tried)
print(tried .. " values refused")
