-- Reads the JSON of the tests. Anything it does not know is an error with its place.
local json = {}
local escapes = { b = "\b", f = "\f", n = "\n", r = "\r", t = "\t" }

local function fail(text, at) error(("no JSON at character %d: %s"):format(at, text:sub(at, at + 20))) end
local function skip(text, at) return text:match("^%s*()", at) end
local value

local function string_at(text, at)
  local parts, from = {}, at + 1
  while true do
    local stop = text:find('["\\]', from) or fail(text, at)
    parts[#parts + 1] = text:sub(from, stop - 1)
    if text:sub(stop, stop) == '"' then return table.concat(parts), stop + 1 end
    local code = text:sub(stop + 1, stop + 1)
    if code == "u" then
      parts[#parts + 1] = utf8.char(tonumber(text:sub(stop + 2, stop + 5), 16))
      from = stop + 6
    else
      parts[#parts + 1] = escapes[code] or code
      from = stop + 2
    end
  end
end

-- Items between brackets: read(at) puts one and gives the place after it.
local function items(text, at, close, read)
  at = skip(text, at + 1)
  if text:sub(at, at) == close then return at + 1 end
  while true do
    at = skip(text, read(skip(text, at)))
    local mark = text:sub(at, at)
    if mark == close then return at + 1 end
    if mark ~= "," then fail(text, at) end
    at = at + 1
  end
end

function value(text, at)
  local mark = text:sub(at, at)
  if mark == '"' then return string_at(text, at) end
  local made = {}
  if mark == "[" then
    local count = 0
    return made, items(text, at, "]", function(place)
      local item, after = value(text, place)
      count = count + 1
      made[count] = item
      return after
    end)
  elseif mark == "{" then
    return made, items(text, at, "}", function(place)
      local name, after = string_at(text, place)
      after = skip(text, after)
      if text:sub(after, after) ~= ":" then fail(text, after) end
      made[name], after = value(text, skip(text, after + 1))
      return after
    end)
  end
  for word, meaning in pairs { ["true"] = true, ["false"] = false } do
    if text:find("^" .. word, at) then return meaning, at + #word end
  end
  if text:find("^null", at) then return nil, at + 4 end
  local number = text:match("^-?%d+%.?%d*[eE]?[+-]?%d*", at) or fail(text, at)
  return math.tointeger(tonumber(number)) or tonumber(number), at + #number
end

function json.read(path)
  local file = assert(io.open(path))
  local text = file:read "a"
  file:close()
  local read, after = value(text, skip(text, 1))
  if skip(text, after) <= #text then fail(text, after) end
  return read
end

return json
