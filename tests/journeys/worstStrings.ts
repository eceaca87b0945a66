/** The mark that would show a string had become part of the page: an element or a script that sets it. */
export const breach = 'tautline-breach';

const payload = `<img src=x onerror="window['${breach}']=1" class="${breach}">`;
const script = `<script>window['${breach}']=1</script>`;

const markup = [
  payload, script, `"${payload}`, `'${payload}`, `">${payload}`, `'>${payload}`, `</script>${script}`, `</title>${payload}`, `</textarea>${payload}`, `</style>${script}`, `-->${payload}`, `]]>${payload}`,
  `<svg/onload="window['${breach}']=1" class="${breach}">`, `<svg><script>window['${breach}']=1</script></svg>`, `<math><mtext>${payload}</mtext></math>`, `<template>${payload}</template>`, `<iframe srcdoc='${payload}' class="${breach}">`,
  `<a href="javascript:window['${breach}']=1" class="${breach}">x</a>`, `javascript:window['${breach}']=1`, `data:text/html,${script}`, `<base href="https://elsewhere.example/" class="${breach}">`, `<meta http-equiv="refresh" content="0;url=https://elsewhere.example/" class="${breach}">`,
  `<link rel=stylesheet href="https://elsewhere.example/x.css" class="${breach}">`, `<object data="https://elsewhere.example/" class="${breach}">`, `<details open ontoggle="window['${breach}']=1" class="${breach}">`, `<input autofocus onfocus="window['${breach}']=1" class="${breach}">`,
  `{{constructor.constructor("window['${breach}']=1")()}}`, `\${window['${breach}']=1}`, `<%= window['${breach}']=1 %>`, `&lt;img class=${breach}&gt;`, `&#60;img class=${breach}&#62;`, `\\u003cimg class=${breach}\\u003e`, `%3Cimg class=${breach}%3E`, `%253Cimg%2520class=${breach}%253E`,
] as const;

const numbers = [
  'NaN', 'Infinity', '-Infinity', '-0', '0', '1e309', '-1e309', '1e-400', '1e21', '0x1F', '0b11', '0o17', '1_000', '1,000.5', '1.000,5', '1,5', '1.5', '..5', '5..', ',,5', '5,', '.5', ',5', '--5', '+-5', '−5', '–5', '+5', '5-', '5e', '5e5', '5E+5', '٣٫٥', '３．５', '½', '5½', '５', '௫', '1/3', '5 mm', '5mm', '5 cm', '0.5in', '5″', '50%', '9'.repeat(400), `0.${'3'.repeat(400)}`, '1'.padEnd(5000, '0'), '999999999999999999999', '-999999999999999999999', '9007199254740993', '2147483648', '-2147483649', '4294967296', '1n', '5;6', '5|6', '5~6', '5_6', '5,6,7', '5,NaN', 'NaN,NaN', ',', ',,', '.', '-', '+', 'e', 'null', 'undefined', 'true', 'false', '[]', '{}', '[object Object]',
] as const;

const names = ['__proto__', 'constructor', 'prototype', 'toString', 'valueOf', 'hasOwnProperty', '__defineGetter__', 'then', 'length', 'then()', '__proto__[x]', '__proto__.x', 'constructor.prototype'] as const;

const text = [
  '', ' ', '\t', '\n', '\r\n', '\0', '\u0001', '\u001b[31m', '\u007f', '\u0085', '\u00a0', '\u00ad', '\u200b', '\u200d', '\u200e', '\u202e5', '\u2028', '\u2029', '\u2066', '\ufeff', '\ufffd', '\ufffe', '\uffff', '\ud800', '\udfff', '\ud800\ud800', '\ud83d\ude00', '👩🏽‍⚕️', 'Z͑ͫ̓ͪ̂ͫ̽͏̴̙', 'ﷺ', '𝟓', 'ß', 'İ', 'ı', 'ſ', 'Å', 'Å', 'ａ', 'ا', 'א', 'क्‍ष', 'ก็็็็็็็็็็็', '|'.repeat(2000), 'a'.repeat(20_000), '%', '%%', '%0', '%zz', '%00', '%0a', '%0d%0aX: y', '%c0%af', '%ff%fe', '%u003c', '+', '%2B', '&', '&&', '&amp;', '&m=1&m=2', '=', '==', '#', '#x', '?', '??', ';', '/', '//', '\\', '..', '../..', '../../../etc/passwd', '..%2f..%2f', '/etc/passwd\0.png', 'C:\\con', 'con', 'nul', 'file:///etc/passwd', 'https://elsewhere.example/', '//elsewhere.example/', 'http://[::1]/',
] as const;

const code = [
  "'", '"', '`', "' OR 1=1 --", "'; DROP TABLE marks; --", '" OR ""="', '$(id)', '`id`', '; id', '| id', '&& id', '${jndi:ldap://elsewhere.example/x}', '(?:a+)+$', '(a|aa)+', '[', '(', '\\', '*', '^', '$&', '$1', '$$', '%s%s%s%n', '%x', '{0}', '{"a":1}', '{"__proto__":{"x":1}}', '[1,2', '"unterminated', '<!--', '-->', '<![CDATA[', '<?php', '<?xml version="1.0"?><!DOCTYPE x [<!ENTITY y "z">]><x>&y;</x>', '@import "https://elsewhere.example/x.css"', 'url(https://elsewhere.example/)', 'expression(1)', '=1+1', '=HYPERLINK("https://elsewhere.example/")', '@SUM(1)', '+1+1', '-1+1', 'eval(1)', 'require("fs")', 'import("x")', 'function(){}', '()=>1', 'async', 'await', 'yield', 'new Date()', 'window', 'self', 'document.cookie', 'localStorage.clear()', 'alert(1)', 'midline', 'pupils', 'PUPILS', ' pupils ', 'pupils,midline', '2026-02-30', '2026-13-01', '0000-00-00', '9999-12-31', '-1', '1.0.0',
] as const;

/** Texts that break readers: markup, numbers that are none, names of the language's own parts, odd characters, code. */
export const worstStrings: readonly string[] = [...new Set([...markup, ...numbers, ...names, ...text, ...code])];
