-- Thousands of calls of every calculation, good and bad, leave the library's memory balanced and the process no larger:
-- FRAME_CALLS of each, a tenth of them of its variations, or as many as FRAME_SECONDS allow. How many that were is printed.
local here = arg[1] or "tests/bindings"
package.path = here .. "/lua/?.lua;" .. package.path
local frame = require "frame"
local good = require("json").read(here .. "/good_inputs.json")
local calls = tonumber(os.getenv "FRAME_CALLS" or 10000)
local seconds = tonumber(os.getenv "FRAME_SECONDS" or 0.1)

local function resident()
  local file = assert(io.open "/proc/self/statm")
  local pages = file:read "a":match "^%d+ (%d+)"
  file:close()
  return pages * 4096
end

local function settle()
  collectgarbage()
  collectgarbage()
end

local function repeat_call(call, count, limit)
  local stop = os.clock() + limit
  for i = 1, count do
    pcall(call)
    if i % 4 == 0 and os.clock() > stop then return i end -- slow calls end soon after their time too
  end
  return count
end

local every = {}
local function add(name, call) every[#every + 1] = { name = name, call = call } end

for _, name in ipairs(frame.calculations()) do
  local function_, given, wrong = frame[name], good[name] or {}, {}
  for key, value in pairs(given) do wrong[key] = value end
  wrong.no_such_field = 1
  add(name, function() function_(given) end)
  add(name .. " with a field it does not have", function() function_(wrong) end)
  add(name .. " with no table", function() function_(1) end)
  add(name .. " and its result", function()
    local result = function_(given)
    local _ = tostring(result) .. tostring(result == function_(given))
    result:to_table()
    for _ in pairs(result) do end
  end)
  add(name .. " with a working", function()
    local with = { working = frame.working() }
    for key, value in pairs(given) do with[key] = value end
    function_(with)
    tostring(with.working)
  end)
end
add("drawing", function() frame.rafter(good.rafter):drawing():svg() end)
add("stick", function()
  local stick = frame.rafter(good.rafter):stick()
  for mark in stick.marks() do local _ = mark.along_in end
end)
add("bad drawing", function() frame.rafter(good.rafter):drawing():line("x") end)
add("boards", function()
  for board in frame.stock_plan(good.stock_plan).boards() do local _ = #board.pieces + board.pieces[1].length_in end
end)
add("batch", function() local _ = frame.batch("section", { size = { "2x4", "2x6" }, plies = { 1, 2 }, outer = true }).area_in2 end)
add("bad batch", function() frame.batch("section", { size = { "2x4", "9x9" } }) end)
add("tape", function() frame.tape_format(frame.tape_parse "7' 6\"") end)
add("bad tape", function() frame.tape_parse "7 x" end)
add("help", function() frame.help "section" end)

-- Three rounds of the same: what the heap keeps of a round's largest moment is there after the first two already.
local blocks, size
for round = 1, 3 do
  for _, each in ipairs(every) do
    local share = (each.name:find " with " or each.name:find " and ") and 10 or 1
    local made = repeat_call(each.call, calls // share // 3 + 1, seconds / math.min(share, 3) / 3)
    each.count = share == 1 and (each.count or 0) + made
    settle()
    blocks = blocks or frame._live_blocks()
    assert(frame._live_blocks() == blocks, each.name .. ": blocks left: " .. frame._live_blocks() - blocks)
  end
  if round < 3 then size = math.max(size or 0, resident()) end
end
assert(resident() - size < 2 * 1024 * 1024, "grew by " .. resident() - size)

local full, counted = 0, {}
for _, each in ipairs(every) do
  if each.count then counted[#counted + 1] = each end
  if each.count and each.count >= calls then full = full + 1 end
end
table.sort(counted, function(a, b) return a.count < b.count end)
print(("%d of %d called %d times; fewest: %s %d"):format(full, #counted, calls, counted[1].name, counted[1].count))
